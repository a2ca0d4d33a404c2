#include "addin/audit/units/expected_columns.hpp"

#include <algorithm>

#include "addin/catalogue/catalogue.hpp"

namespace undercroft::audit {

using addin::Shape;
using addin::ValueType;

ExpectedColumns::ExpectedColumns(const ValueType& type) {
    if (type.shape != Shape::table) units.push_back(bare_unit_text(type));
    for (const ValueType& column : type.columns) {
        units.push_back(bare_unit_text(column));
        unit_beside.push_back(column.unit_beside);
    }
    const addin::Function* writer = addin::find_function(type.also_from);
    if (writer != nullptr)
        for (const addin::Column& column : writer->outcome.columns) units_as_written.push_back(column.unit());
}

const std::string& ExpectedColumns::unit(std::size_t c, std::size_t width) const {
    const std::vector<std::string>& columns = width == units_as_written.size() ? units_as_written : units;
    return columns[std::min(c, columns.size() - 1)];
}

std::vector<std::int32_t> ExpectedColumns::places_beside(std::int32_t width) const {
    std::vector<std::int32_t> places;
    std::int32_t place = 0;
    for (const bool with_unit : unit_beside) {
        places.push_back(place);
        place += with_unit ? 2 : 1;
    }
    const bool beside = place == width && place > static_cast<std::int32_t>(unit_beside.size());
    return beside ? places : std::vector<std::int32_t>{};
}

}  // namespace undercroft::audit
