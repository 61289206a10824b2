#include "quiz/qti/package.hpp"

#include "quiz/qti/processing.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <set>

namespace flapdoor::quiz {

namespace {

struct Resource {
    std::string identifier, type, path;
    std::vector<std::string> pictures;
};

XmlElement manifest_of(const std::string& identifier, const std::vector<Resource>& resources)
{
    XmlElement root = tag("manifest", {{"xmlns", "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1"}, {"identifier", identifier_of("manifest-" + identifier)}});
    XmlElement& metadata = add(root, tag("metadata"));
    say(add(metadata, tag("schema")), "QTI Package");
    say(add(metadata, tag("schemaversion")), "3.0.0");
    add(root, tag("organizations"));
    XmlElement& list = add(root, tag("resources"));
    for (const Resource& resource : resources) {
        XmlElement& entry = add(list, tag("resource", {{"identifier", resource.identifier}, {"type", resource.type}, {"href", resource.path}}));
        add(entry, tag("file", {{"href", resource.path}}));
        for (const std::string& picture : resource.pictures) add(entry, tag("file", {{"href", picture}}));
        if (resource.type.find("test") == std::string::npos) continue;
        for (const Resource& other : resources)
            if (other.identifier != resource.identifier) add(entry, tag("dependency", {{"identifierref", other.identifier}}));
    }
    return root;
}

std::string item_path(const std::string& identifier) { return fmt::format("items/{}.xml", identifier); }

/// Items into files, a resource each.
std::vector<Resource> add_items(const std::vector<PaperItem>& items, QtiPackage& package)
{
    std::vector<Resource> resources;
    std::set<std::string> pictures;
    for (const PaperItem& asked : items) {
        QtiItem item = export_item(asked.question, asked.item);
        Resource resource{item.identifier, "imsqti_item_xmlv3p0", item_path(item.identifier), {}};
        package.files.push_back({resource.path, std::move(item.xml)});
        for (QtiFile& picture : item.pictures) {
            resource.pictures.push_back(picture.path);
            if (pictures.insert(picture.path).second) package.files.push_back(std::move(picture));
        }
        for (std::string& what : item.losses) package.losses.push_back({asked.item, std::move(what)});
        resources.push_back(std::move(resource));
    }
    return resources;
}

XmlElement test_of(const Paper& paper)
{
    const std::string identifier = identifier_of(fmt::format("{}-{}", paper.blueprint, paper.seed));
    XmlElement root = tag("qti-assessment-test", {{"xmlns", "http://www.imsglobal.org/xsd/imsqtiasi_v3p0"}, {"identifier", identifier}, {"title", shown(paper.title)}, {"xml:lang", std::string(text::code_of(text::spoken()))}, {"tool-name", "Flapdoor"}, {"tool-version", "1"}});
    add(root, tag("qti-outcome-declaration", {{"identifier", "SCORE"}, {"cardinality", "single"}, {"base-type", "float"}, {"normal-maximum", std::to_string(points_of(paper))}}));
    if (paper.limit) add(root, tag("qti-time-limits", {{"max-time", fmt::format("{:.0f}", paper.limit->si)}}));
    const bool is_at_once = paper.feedback == Feedback::at_once;
    XmlElement& part = add(root, tag("qti-test-part", {{"identifier", "part-1"}, {"navigation-mode", is_at_once ? "linear" : "nonlinear"}, {"submission-mode", is_at_once ? "individual" : "simultaneous"}}));
    add(part, tag("qti-item-session-control", {{"max-attempts", "1"}, {"show-feedback", is_at_once ? "true" : "false"}}));
    XmlElement& section = add(part, tag("qti-assessment-section", {{"identifier", "section-1"}, {"title", shown(paper.title)}, {"visible", "true"}}));
    for (const PaperItem& item : paper.items) {
        const std::string of = identifier_of(item.item);
        add(section, tag("qti-assessment-item-ref", {{"identifier", of}, {"href", item_path(of)}}));
    }
    XmlElement& processing = add(root, tag("qti-outcome-processing"));
    add(processing, set_to("SCORE", over("qti-sum", {tag("qti-test-variables", {{"variable-identifier", "SCORE"}})})));
    return root;
}

}

QtiPackage export_items(const std::string& identifier, const std::vector<PaperItem>& items)
{
    QtiPackage package;
    const std::vector<Resource> resources = add_items(items, package);
    package.files.insert(package.files.begin(), {"imsmanifest.xml", write_xml(manifest_of(identifier, resources))});
    return package;
}

QtiPackage export_paper(const Paper& paper)
{
    QtiPackage package;
    std::vector<Resource> resources = add_items(paper.items, package);
    const XmlElement test = test_of(paper);
    resources.insert(resources.begin(), {*test.attribute("identifier"), "imsqti_test_xmlv3p0", "test.xml", {}});
    package.files.insert(package.files.begin(), {"test.xml", write_xml(test)});
    package.files.insert(package.files.begin(), {"imsmanifest.xml", write_xml(manifest_of(*test.attribute("identifier"), resources))});
    return package;
}

}
