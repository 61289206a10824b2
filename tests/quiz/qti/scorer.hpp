#pragma once

#include "quiz/qti/xml.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <vector>

/// Works out the response processing of an item as the standard describes it, for the operators that exported items use.
/// Apart from the exporter: it knows XML only.
namespace flapdoor::quiz {

class Scorer {
public:
    using Value = std::vector<std::string>;     ///< empty: null

    explicit Scorer(const XmlElement& item) : item_(item) {}

    /// The outcomes after an answer.
    std::map<std::string, Value> outcomes(Value response)
    {
        values_.clear();
        for (const XmlElement* outcome : item_.children("qti-outcome-declaration"))
            if (const XmlElement* by_default = outcome->child("qti-default-value")) values_[*outcome->attribute("identifier")] = {text_of(*by_default->child("qti-value"))};
        values_["RESPONSE"] = std::move(response);
        run(item_.child("qti-response-processing")->children());
        return values_;
    }

    double score(Value response) { return std::stod(outcomes(std::move(response)).at("SCORE").at(0)); }

private:
    static std::string text_of(const XmlElement& element) { return element.content.empty() ? std::string() : std::get<std::string>(element.content[0]); }
    static std::string written(double number) { return std::to_string(number); }

    const XmlElement& declaration() const { return *item_.child("qti-response-declaration"); }

    Value key() const
    {
        Value key;
        for (const XmlElement* value : declaration().child("qti-correct-response")->children("qti-value")) key.push_back(text_of(*value));
        return key;
    }

    bool is_true(const XmlElement& expression) { return value(expression) == Value{"true"}; }

    double mapped()
    {
        const XmlElement& mapping = *declaration().child("qti-mapping");
        double sum = 0.0;
        Value seen;
        for (const std::string& chosen : values_["RESPONSE"]) {
            if (std::find(seen.begin(), seen.end(), chosen) != seen.end()) continue;
            seen.push_back(chosen);
            double one = std::stod(mapping.attribute("default-value").value_or("0"));
            for (const XmlElement* entry : mapping.children("qti-map-entry"))
                if (entry->attribute("map-key") == chosen) one = std::stod(*entry->attribute("mapped-value"));
            sum += one;
        }
        return std::clamp(sum, std::stod(*mapping.attribute("lower-bound")), std::stod(*mapping.attribute("upper-bound")));
    }

    bool is_equal(const XmlElement& e, double a, double b)
    {
        const std::string mode = e.attribute("tolerance-mode").value_or("exact");
        if (mode == "exact") return a == b;
        const double width = std::stod(*e.attribute("tolerance"));
        const double allowed = mode == "relative" ? std::fabs(b) * width / 100.0 : width;
        return std::fabs(a - b) <= allowed * (1.0 + 1e-9);
    }

    Value value(const XmlElement& e)
    {
        const auto parts = e.children();
        const auto truth = [](bool is) { return Value{is ? "true" : "false"}; };
        const auto number = [&](std::size_t i) { return std::stod(value(*parts[i]).at(0)); };
        if (e.name == "qti-base-value") return {text_of(e)};
        if (e.name == "qti-variable") return values_[*e.attribute("identifier")];
        if (e.name == "qti-correct") return key();
        if (e.name == "qti-map-response") return {written(mapped())};
        if (e.name == "qti-is-null") return truth(value(*parts[0]).empty());
        if (e.name == "qti-not") return truth(!is_true(*parts[0]));
        if (e.name == "qti-and") return truth(std::all_of(parts.begin(), parts.end(), [&](const XmlElement* part) { return is_true(*part); }));
        if (e.name == "qti-match") {
            Value a = value(*parts[0]), b = value(*parts[1]);
            const bool is_ordered = declaration().attribute("cardinality") == "ordered";
            if (!is_ordered) {
                std::sort(a.begin(), a.end());
                std::sort(b.begin(), b.end());
            }
            return truth(!a.empty() && a == b);
        }
        if (e.name == "qti-member") {
            const Value container = value(*parts[1]);
            return truth(std::find(container.begin(), container.end(), value(*parts[0]).at(0)) != container.end());
        }
        if (e.name == "qti-delete") {
            Value container = value(*parts[1]);
            std::erase(container, value(*parts[0]).at(0));
            return container;
        }
        if (e.name == "qti-ordered" || e.name == "qti-multiple") {
            Value all;
            for (const XmlElement* part : parts)
                for (const std::string& one : value(*part)) all.push_back(one);
            return all;
        }
        if (e.name == "qti-equal") return truth(!value(*parts[0]).empty() && is_equal(e, number(0), number(1)));
        if (e.name == "qti-sum") return {written(number(0) + number(1))};
        if (e.name == "qti-product") return {written(number(0) * number(1))};
        if (e.name == "qti-divide") return {written(number(0) / number(1))};
        FAIL("an operator that the scorer does not know: " << e.name);
        return {};
    }

    void run(const std::vector<const XmlElement*>& statements)
    {
        for (const XmlElement* statement : statements) {
            if (statement->name == "qti-set-outcome-value") {
                values_[*statement->attribute("identifier")] = value(*statement->children()[0]);
                continue;
            }
            REQUIRE(statement->name == "qti-response-condition");
            const XmlElement& branch = *statement->child("qti-response-if");
            auto then = branch.children();
            if (is_true(*then[0])) run({then.begin() + 1, then.end()});
            else if (const XmlElement* otherwise = statement->child("qti-response-else")) run(otherwise->children());
        }
    }

    const XmlElement& item_;
    std::map<std::string, Value> values_;
};

}
