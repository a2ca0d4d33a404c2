#include "sheets/builder/fields.hpp"

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
