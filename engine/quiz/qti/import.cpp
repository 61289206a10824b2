#include "quiz/qti/import.hpp"

#include "quiz/qti/item_reading.hpp"
#include "text/quote.hpp"
#include "text/writing.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>
#include <utility>

namespace flapdoor::quiz {

namespace {

constexpr std::array<std::string_view, 3> name_spaces{"http://www.imsglobal.org/xsd/imsqtiasi_v3p0", "http://www.imsglobal.org/xsd/imsqti_v2p2", "http://www.imsglobal.org/xsd/imsqti_v2p1"};

using Read = std::optional<AnyKind> (*)(ItemReading&, const XmlElement&);
constexpr std::array<std::pair<std::string_view, Read>, 4> taken{std::pair{std::string_view("choiceInteraction"), &read_choice}, {"orderInteraction", &read_order}, {"textEntryInteraction", &read_text_entry}, {"hotspotInteraction", &read_hotspot}};

Read reader_of(const std::string& name)
{
    const auto found = std::find_if(taken.begin(), taken.end(), [&](const auto& one) { return one.first == name; });
    return found == taken.end() ? nullptr : found->second;
}

void gather_interactions(const XmlElement& inside, std::vector<const XmlElement*>& all)
{
    for (const XmlElement* child : inside.children()) {
        if (child->name.ends_with("Interaction")) all.push_back(child);
        else gather_interactions(*child, all);
    }
}

/// Feedback by its identifier, wherever it stands. The paragraph with the citation of an item of ours is not part of it.
void gather_told(const XmlElement& root, ItemReading& item)
{
    for (const char* name : {"feedbackInline", "feedbackBlock", "modalFeedback"})
        for (const XmlElement* feedback : all_named(root, name)) {
            const auto paragraphs = all_named(*feedback, "p");
            const auto cite = std::find_if(paragraphs.begin(), paragraphs.end(), [](const XmlElement* p) { return p->attribute("class") == "cite"; });
            item.told.emplace(feedback->attribute("identifier").value_or(""), words_in(*feedback, cite == paragraphs.end() ? nullptr : *cite));
        }
}

/// What stands in the body and does not come along.
void note_left_out(ItemReading& item)
{
    const std::array<std::pair<std::string_view, std::string_view>, 6> parts{
        std::pair{std::string_view("math"), text::to_say("A formula was left out.")}, {"rubricBlock", text::to_say("Words for graders or teachers were left out.")}, {"table", text::to_say("A table became a line of words.")},
        {"audio", text::to_say("A sound was left out.")}, {"video", text::to_say("A film was left out.")}, {"svg", text::to_say("A drawing was left out.")}};
    for (const auto& [name, what] : parts)
        for (const XmlElement* part : all_named(*item.body, name)) item.note(*part, std::string(text::say(what)));
    if (all_named(*item.body, "hotspotInteraction").empty())     // whose picture was told of
        for (const XmlElement* picture : all_named(*item.body, "img")) item.note(*picture, text::say_with("A picture became its description, {}.", text::quoted(picture->attribute("alt").value_or(""))));
    for (const char* name : {"stylesheet", "catalogInfo"})
        for (const XmlElement* part : all_named(item.root, name)) item.note(*part, text::say_with("{} was left out.", text::quoted(part->name)));
}

/// An item's attribute on the element that holds the body of items of ours.
std::string ours(const ItemReading& item, std::string_view name)
{
    for (const XmlElement* part : item.body->children())
        if (const auto value = part->attribute(name)) return *value;
    return {};
}

int points_of(ItemReading& item)
{
    for (const XmlElement* outcome : item.root.children("outcomeDeclaration")) {
        if (outcome->attribute("identifier") != "MAXSCORE" && !outcome->attribute("normalMaximum")) continue;
        const XmlElement* by_default = outcome->child("defaultValue");
        const auto most = number_in(outcome->attribute("normalMaximum").value_or(by_default ? words_in(*by_default) : ""));
        if (!most) continue;
        if (most->si >= 1.0 && most->si <= 10.0 && most->si == static_cast<int>(most->si)) return static_cast<int>(most->si);
        item.note(*outcome, std::string(text::say("Points there are not whole ones from 1 to 10; one point is taken.")));
    }
    return 1;
}

std::string question_text(const ItemReading& item, const XmlElement& interaction)
{
    const XmlElement* prompt = interaction.child("prompt");
    // A blank stands inside the words; other interactions have words of their own.
    const XmlElement* apart = interaction.name == "textEntryInteraction" ? nullptr : &interaction;
    std::string words = words_in(*item.body, apart);
    if (item.is_ours && interaction.name == "textEntryInteraction") words = words.substr(0, words.find(" ____"));
    if (prompt != nullptr) words += (words.empty() ? "" : " ") + words_in(*prompt);
    return words;
}

/// Explanations: ours by its name, of others what is told whatever was answered.
Phrase why_of(const ItemReading& item)
{
    if (item.told.contains("why")) return told_of(item, "why", {});
    const auto modal = item.root.children("modalFeedback");
    for (const XmlElement* feedback : modal)
        if (const std::string words = words_in(*feedback); !words.empty()) return phrase_of(words);
    return phrase(text::to_say("The file gives no reason for its key."));
}

void note_scoring(ItemReading& item)
{
    if (item.is_ours) return;
    const XmlElement* processing = item.root.child("responseProcessing");
    if (processing == nullptr || processing->attribute("template") || !all_named(*processing, "equal").empty()) return;
    if (!processing->children().empty()) item.note(*processing, std::string(text::say("Its own way of scoring was left out; answers score as they do here.")));
}

std::optional<Question> read_question(ItemReading& item)
{
    if (item.root.attribute("adaptive") == "true") return item.give_up(item.root, std::string(text::say("It changes with the answers (adaptive).")));
    if (const XmlElement* draws = item.root.child("templateDeclaration")) return item.give_up(*draws, std::string(text::say("It draws its figures by itself (template).")));
    item.body = item.root.child("itemBody");
    if (item.body == nullptr) return item.give_up(item.root, std::string(text::say("It has no body.")));
    std::vector<const XmlElement*> interactions;
    gather_interactions(*item.body, interactions);
    if (interactions.empty()) return item.give_up(*item.body, std::string(text::say("It asks nothing.")));
    const XmlElement& interaction = *interactions.front();
    if (interactions.size() > 1) return item.give_up(*interactions[1], std::string(text::say("It asks several things in one item; only one is taken.")));
    const Read read = reader_of(interaction.name);
    if (read == nullptr) return item.give_up(interaction, text::say_with("{} has no counterpart here; choice, order, text entry with a number and hotspot are taken.", text::quoted(interaction.name)));

    const auto kind_name = ours(item, "data-flapdoor-kind");
    item.is_ours = !kind_name.empty();
    gather_told(item.root, item);
    const auto kind = read(item, interaction);
    if (!kind) return std::nullopt;
    note_left_out(item);
    note_scoring(item);
    Question question;
    const std::string own_id = ours(item, "data-flapdoor-id");
    question.id = {own_id.empty() ? item.identifier : own_id, item.root.where};
    question.topic = from_word<Topic>(ours(item, "data-flapdoor-topic")).value_or(Topic::other);
    question.level = from_word<Level>(ours(item, "data-flapdoor-level")).value_or(Level::know);
    question.cite = ours(item, "data-flapdoor-cite");
    if (question.cite.empty()) question.cite = "imported, no source given";
    question.points = points_of(item);
    question.text = phrase_of(question_text(item, interaction));
    question.why = why_of(item);
    question.kind = *kind;
    if (item.is_ours && kind_name != quiz::kind_name(question)) item.note(interaction, text::say_with("What was {} there comes back as {}.", text::quoted(kind_name), text::quoted(std::string(quiz::kind_name(question)))));
    return question;
}

/// The lint of banks decides: what it would refuse is left out, with its words.
std::optional<Question> linted(ItemReading& item, const Question& question)
{
    Bank bank = bank_of_imported("imported", "imported", {question});
    const Result<Bank> read = read_bank(text::write_toml(bank), item.root.where.file, item.find);
    if (read) return read->questions.front();
    for (const Problem& problem : read.error()) item.give_up(item.root, text::say_with("Not taken: expected {}, found {}.", problem.expected, problem.found));
    return std::nullopt;
}

bool is_known_name_space(const XmlElement& root)
{
    for (const XmlAttribute& attribute : root.attributes)
        if (attribute.name.starts_with("xmlns") && std::find(name_spaces.begin(), name_spaces.end(), attribute.value) != name_spaces.end()) return true;
    return false;
}

}

Result<Imported> import_item(std::string_view xml, const std::string& file_name, const FindScenario& find)
{
    Result<XmlElement> root = parse_xml(xml, file_name);
    if (!root) return failed(root.error());
    const std::string written = root->name;
    use_common_names(*root);
    ItemReading item{*root, nullptr, find, root->attribute("identifier").value_or(""), {}, {}, false};
    Imported imported;
    if (root->name == "manifest" || root->name == "assessmentTest") {
        item.note(*root, text::say_with("{} holds no question; the items it names are read by themselves.", text::quoted(written)));
        imported.notes = std::move(item.notes);
        return imported;
    }
    if (root->name != "assessmentItem") return failed(Problem{root->where, "a question item (qti-assessment-item or assessmentItem)", text::quoted(written)});
    if (!is_known_name_space(*root)) return failed(Problem{root->where, fmt::format("the namespace {} (or those of versions 2.2 and 2.1)", name_spaces[0]), "another one, or none"});
    if (auto question = read_question(item))
        if (auto checked = linted(item, *question)) imported.questions.push_back(std::move(*checked));
    imported.notes = std::move(item.notes);
    std::stable_sort(imported.notes.begin(), imported.notes.end(), [](const ImportNote& a, const ImportNote& b) { return a.where < b.where; });
    return imported;
}

Bank bank_of_imported(std::string id, std::string title, std::vector<Question> questions)
{
    Bank bank;
    bank.id = std::move(id);
    bank.title = phrase_of(title);
    bank.edition = "imported; the answers are those of the files";
    std::set<std::string> ids;
    for (Question& question : questions) {
        const std::string wanted = question.id.text;
        for (int number = 2; !ids.insert(question.id.text).second; ++number) question.id.text = fmt::format("{}-{}", wanted, number);
    }
    bank.questions = std::move(questions);
    return bank;
}

}
