#include "sheets/builder/fields.hpp"

#include <algorithm>
#include <boost/algorithm/string/classification.hpp>
#include <boost/algorithm/string/predicate.hpp>

namespace undercroft::sheets {

namespace {

bool is_key(const std::string& text) {
    using boost::algorithm::is_any_of;
    using boost::algorithm::is_from_range;
    return text.find('_') != std::string::npos &&
           boost::algorithm::all(text, is_from_range('a', 'z') || is_from_range('0', '9') || is_any_of("_"));
}

}  // namespace

std::optional<Usual> Fields::take_usual() {
    constexpr std::string_view word = "usual ";
    const auto field = std::find_if(fields_.begin(), fields_.end(),
                                    [&](const std::string& text) { return text.starts_with(word); });
    if (field == fields_.end()) return std::nullopt;
    try {
        const std::vector<std::string> parts = fields_of(field->substr(word.size()), ',');
        Usual usual = usual_in(parts[0]);
        for (std::size_t i = 1; i < parts.size(); ++i) {
            std::string part = parts[i];
            if (take_word(part) != "possible" || usual.any)
                mistake("'" + parts[i] + "' says nothing of what is usual");
            usual.possible = range_in(part);
        }
        fields_.erase(field);
        return usual;
    } catch (const TextMistake&) {
        throw;
    } catch (const std::runtime_error& error) {
        mistake(error.what());
    }
}

bool Fields::take_optional() {
    return std::erase(fields_, "optional") > 0;
}

std::string Fields::at(std::size_t i) const {
    return i < fields_.size() ? fields_[i] : std::string();
}

std::string Fields::key(std::size_t i) const {
    if (!is_key(at(i)))
        mistake("'" + at(i) + "' is no key: small letters and digits with an underscore inside");
    return at(i);
}

DualText Fields::formula(std::size_t i) const {
    DualText made = dual_at(i);
    if (made.si.empty() || made.us.empty()) mistake("a formula is wanted");
    return made;
}

NumberAndUnit Fields::quantity(const std::string& text) const {
    try {
        return number_and_unit(text);
    } catch (const std::runtime_error& error) {
        mistake(error.what());
    }
}

}  // namespace undercroft::sheets
