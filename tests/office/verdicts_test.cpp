// What each check says when a number of the job is moved past its limit, and back.
#include <com/sun/star/sheet/XCellAddressable.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/table/CellContentType.hpp>

#include <vector>

#include "sheets/builder/numbers.hpp"
#include "tests/office/desk.hpp"
#include "tests/support/files.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

namespace {

using Cell = css::uno::Reference<css::table::XCell>;

/// `key`, its first cell, or `key+2`, the one two rows below.
Cell cell_of(const sheets::Document& document, const std::string& place, int columns_right = 0) {
    const std::size_t plus = place.find('+');
    const Cell first = document.named(place.substr(0, plus), columns_right);
    if (plus == std::string::npos) return first;
    const css::uno::Reference<css::sheet::XCellAddressable> addressable(first, css::uno::UNO_QUERY_THROW);
    const css::uno::Reference<css::sheet::XSheetCellRange> range(first, css::uno::UNO_QUERY_THROW);
    const auto address = addressable->getCellAddress();
    return range->getSpreadsheet()->getCellByPosition(address.Column,
                                                      address.Row + std::stoi(place.substr(plus + 1)));
}

/// Holds what stood in a cell and puts it back.
class Kept {
public:
    explicit Kept(Cell cell) : cell_(std::move(cell)), formula_(cell_->getFormula()) {}
    void put_back() const { cell_->setFormula(formula_); }

private:
    Cell cell_;
    rtl::OUString formula_;
};

/// Types `key = 1.2 m`, `key = word`, or `key =` for a blank. \return what stood there.
std::vector<Kept> type_in(const sheets::Document& document, const std::string& set) {
    const std::size_t equals = set.find('=');
    REQUIRE(equals != std::string::npos);
    const std::string place(trimmed(set.substr(0, equals)));
    const std::string value(trimmed(set.substr(equals + 1)));
    const Cell cell = cell_of(document, place);
    std::vector<Kept> kept{Kept(cell)};
    const auto quantity = sheets::leading_number(value);
    if (!quantity || cell->getType() == css::table::CellContentType_TEXT) {
        cell->setFormula(sheets::to_ustring(value.empty() ? value : "'" + value));
        return kept;
    }
    cell->setValue(quantity->number);
    if (quantity->unit.empty()) return kept;
    const Cell unit = cell_of(document, place, 1);
    kept.emplace_back(unit);
    unit->setFormula(sheets::to_ustring(quantity->unit));
    return kept;
}

}  // namespace

TEST_CASE("each check fails, passes, waits or does not count where it must") {
    const sheets::Document document =
        the_office().open(std::filesystem::path(TEMPLATES_FOLDER) / "whole-job.ots");
    int cases = 0;
    for (const std::string& line : split(file_text("tests/data/verdicts.txt"), '\n')) {
        if (line.empty() || line.front() == '#') continue;
        const std::vector<std::string> fields = split(line, '|');
        REQUIRE(fields.size() == 3);
        INFO(line);
        std::vector<Kept> kept;
        for (const std::string& set : split(fields[1], ';'))
            for (Kept& old : type_in(document, set)) kept.push_back(std::move(old));
        const Cell check = document.named(fields[0]);
        const bool refused = check->getError() != 0;
        CHECK((refused ? std::string("refused") : sheets::shown(check)) == fields[2]);
        for (auto old = kept.rbegin(); old != kept.rend(); ++old) old->put_back();
        ++cases;
    }
    CHECK(cases > 60);
}

}  // namespace undercroft::tests
