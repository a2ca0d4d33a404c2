/// \file refused.hpp
/// The one exception for input that is refused, with its cause and a sentence for the person.
#pragma once

#include <stdexcept>
#include <string>
#include <type_traits>

namespace undercroft {

/// Why an input got no answer. Each cause is a different error in the cell.
enum class Cause {
    value,           ///< wrong dimension, unknown or ambiguous unit, text where a number is needed
    domain,          ///< outside the method's domain: negative depth, porosity over 1
    no_answer,       ///< no answer where one was sought: lookup outside the table
    no_convergence,  ///< an iteration found no answer
};

/// What was wrong with an input, where somebody else than the person has to know.
enum class Refusal {
    other,
    dimension,     ///< a quantity or a unit of another dimension than wanted
    blank,         ///< nothing where something is wanted
    unusual,       ///< a number without a unit that is unusual in the unit it would be read in
    impossible,    ///< a quantity beyond all that is possible
    mixed,         ///< a number without a unit beside units of another system
    not_followed,  ///< what only Calc can compute: it may well have a value
};

/// Input that is refused. `what()` is a sentence that says what came and what is wanted.
class Refused : public std::domain_error {
public:
    Refused(Cause cause, const std::string& sentence, Refusal what = Refusal::other)
        : std::domain_error(sentence), cause_(cause), refusal_(what) {}

    [[nodiscard]] Cause cause() const { return cause_; }
    [[nodiscard]] Refusal refusal() const { return refusal_; }

    /// The same refusal in other words.
    [[nodiscard]] Refused saying(const std::string& sentence) const { return {cause_, sentence, refusal_}; }
    /// The same refusal with words in front of its sentence.
    [[nodiscard]] Refused after(const std::string& words) const { return saying(words + what()); }
    /// The same refusal with the name of the argument in front.
    [[nodiscard]] Refused at(const std::string& argument) const { return after(argument + ": "); }

private:
    Cause cause_;
    Refusal refusal_;
};

/// Calls, and puts words in front of the sentence of a refusal that comes of it. The words are a text, or
/// what makes one: that is asked for them only then.
template <class Words, class Call>
decltype(auto) refused_behind(const Words& words, const Call& call) {
    try {
        return call();
    } catch (const Refused& refused) {
        if constexpr (std::is_invocable_v<const Words&>)
            throw refused.saying(words() + refused.what());
        else
            throw refused.saying(words + refused.what());
    }
}

[[noreturn]] inline void refuse_value(const std::string& sentence) {
    throw Refused(Cause::value, sentence);
}
[[noreturn]] inline void refuse_dimension(const std::string& sentence) {
    throw Refused(Cause::value, sentence, Refusal::dimension);
}
[[noreturn]] inline void refuse_blank(const std::string& sentence) {
    throw Refused(Cause::value, sentence, Refusal::blank);
}
[[noreturn]] inline void refuse_domain(const std::string& sentence) {
    throw Refused(Cause::domain, sentence);
}
[[noreturn]] inline void no_answer(const std::string& sentence) {
    throw Refused(Cause::no_answer, sentence);
}

}  // namespace undercroft
