#pragma once

#include "quiz/question.hpp"
#include "text/field_types.hpp"

#include <type_traits>
#include <variant>

namespace flapdoor::quiz {

/// The visitor that finds every text among the fields of a thing and of what is inside it.
template <class Visit>
struct PhraseWalk {
    Visit& visit;

    template <class Field, class... Given>
    void operator()(std::string_view, Field& field, const Given&...)
    {
        look(field);
    }

    template <class Field>
    void look(Field& field)
    {
        using Plain = std::remove_const_t<Field>;
        if constexpr (std::is_same_v<Plain, Phrase>) {
            if (!field.is_empty()) visit(field);
        }
        else if constexpr (text::is_list<Plain>) {
            for (auto& entry : field) look(entry);
        }
        else if constexpr (text::is_optional<Plain>) {
            if (field) look(*field);
        }
        else if constexpr (text::is_choice<Plain>) std::visit([&](auto& alternative) { look(alternative); }, field);
        else if constexpr (Described<Plain> && !text::SpellsItself<Plain>) Plain::fields(field, *this);
    }
};

/// Calls `visit(phrase)` for every text of a question that is not empty, in the order of its fields.
template <class AnyQuestion, class Visit>
void each_phrase(AnyQuestion& question, Visit&& visit)
{
    PhraseWalk<std::remove_reference_t<Visit>> walk{visit};
    walk.look(question);
}

}
