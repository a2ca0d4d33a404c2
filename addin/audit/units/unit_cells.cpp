#include "addin/audit/units/unit_cells.hpp"

#include <algorithm>

#include "addin/audit/book/number_format.hpp"

namespace undercroft::audit {

namespace {
constexpr int most_runs = 200;  // of different units in one range: by then all is said

bool is_figure(const BookCell& cell) {
    return cell.error != 0 || cell.number() != nullptr;
}
}  // namespace

UnitCells::UnitCells(const Book& book, UnitTexts& texts) : book_(book), texts_(texts) {
    places_.resize(book.sheets.size());
    runs_.resize(book.sheets.size());
    for (std::size_t s = 0; s < book.sheets.size(); ++s) {
        const auto sheet = static_cast<std::int32_t>(s);
        places_[s].resize(book.sheets[s].cells.size());
        runs_[s].resize(static_cast<std::size_t>(book.columns(sheet)));
        for (std::int32_t column = 0; column < book.columns(sheet); ++column) find_units(sheet, column);
        find_units_in_labels(sheet);
        for (std::int32_t column = 0; column < book.columns(sheet); ++column)
            find_units_to_the_left(sheet, column);
        for (std::int32_t column = 0; column < book.columns(sheet); ++column) gather_runs(sheet, column);
    }
}

const UnitText* UnitCells::as_unit(std::int32_t sheet, const BookCell* cell) const {
    if (cell == nullptr) return nullptr;
    // The unit of a pure number, picked from a list of units: Calc makes a number of it.
    const CellFormat& format = book_.sheets[static_cast<std::size_t>(sheet)].formats[cell->format];
    if (!cell->is_formula() && format.has_list && cell->number() != nullptr && *cell->number() == 1)
        return &read("1");
    const std::string* text = cell->text();
    if (text == nullptr || text->empty() || text->size() > longest_unit) return nullptr;
    const UnitText& read_text = read(*text);
    return read_text.unit ? &read_text : nullptr;
}

/// A text at the head of a column is its unit only where a heading stands above it, or where a function wrote
/// it there: a column headed `L` may be a length and no litres.
bool UnitCells::is_head(std::int32_t sheet, const BookCell& cell) const {
    if (cell.array >= 0)
        return book_.sheets[static_cast<std::size_t>(sheet)]
                   .arrays[static_cast<std::size_t>(cell.array)]
                   .first_row == cell.row;
    const BookCell* above = book_.find({sheet, cell.row - 1, cell.column});
    return above != nullptr && above->text() != nullptr && !above->text()->empty() &&
           as_unit(sheet, above) == nullptr;
}

void UnitCells::find_units(std::int32_t sheet, std::int32_t column) {
    const std::vector<BookCell>& cells = book_.sheets[static_cast<std::size_t>(sheet)].cells;
    std::vector<UnitPlace>& places = places_[static_cast<std::size_t>(sheet)];
    UnitPlace head;
    std::int32_t next_row = -1;  // where the table goes on
    for (const std::uint32_t i : book_.column(sheet, column)) {
        const BookCell& cell = cells[i];
        if (cell.row != next_row) head = {};
        next_row = cell.row + 1;
        if (!is_figure(cell)) {
            const bool fills_table = cell.array >= 0 && cell.shows_nothing();
            if (!fills_table) {
                const UnitText* unit = as_unit(sheet, &cell);
                if (unit == nullptr)
                    unit = in_label(cell);
                else if (!is_head(sheet, cell))
                    unit = nullptr;
                head = unit != nullptr ? UnitPlace{unit, cell.row, cell.column} : UnitPlace{};
            }
            continue;
        }
        UnitPlace place = head;
        const BookCell* right = book_.find({sheet, cell.row, column + 1});
        if (const UnitText* unit = as_unit(sheet, right)) place = {unit, cell.row, column + 1};
        places[i] = place;
    }
}

const UnitText* UnitCells::in_label(const BookCell& cell) const {
    if (cell.is_formula() || cell.text() == nullptr) return nullptr;
    const std::optional<std::string> unit = unit_in_label(*cell.text());
    return unit ? &read(*unit) : nullptr;
}

/// "Diameter (mm)" in front of the only number of its row.
void UnitCells::find_units_in_labels(std::int32_t sheet) {
    const std::vector<BookCell>& cells = book_.sheets[static_cast<std::size_t>(sheet)].cells;
    std::vector<UnitPlace>& places = places_[static_cast<std::size_t>(sheet)];
    for (std::size_t first = 0; first < cells.size();) {
        std::size_t end = first;
        std::size_t figures = 0;
        std::size_t figure = 0;
        for (; end < cells.size() && cells[end].row == cells[first].row; ++end)
            if (is_figure(cells[end])) {
                ++figures;
                figure = end;
            }
        if (figures == 1 && places[figure].text == nullptr && figure > first)
            if (const UnitText* unit = in_label(cells[figure - 1]))
                places[figure] = {unit, cells[figure - 1].row, cells[figure - 1].column};
        first = end;
    }
}

/// Units in a column left of the numbers, where nearly all that stands there is a unit and none stands to the
/// right: a column of symbols holds some that could be units too.
void UnitCells::find_units_to_the_left(std::int32_t sheet, std::int32_t column) {
    const std::vector<BookCell>& cells = book_.sheets[static_cast<std::size_t>(sheet)].cells;
    std::vector<UnitPlace>& places = places_[static_cast<std::size_t>(sheet)];
    std::vector<std::pair<std::uint32_t, const BookCell*>> with_units;
    std::size_t others = 0;
    for (const std::uint32_t i : book_.column(sheet, column)) {
        if (!is_figure(cells[i])) continue;
        if (places[i].text != nullptr) {
            if (places[i].row == cells[i].row && places[i].column == column + 1) return;
            continue;
        }
        std::size_t left = i;
        while (left > 0 && cells[left].row == cells[i].row && is_figure(cells[left])) --left;
        const BookCell& text = cells[left];
        const bool of_another = left > 0 && cells[left - 1].row == text.row &&
                                cells[left - 1].column + 1 == text.column &&
                                is_figure(cells[left - 1]);  // the unit of the number before it
        if (of_another || text.row != cells[i].row || text.is_formula() || text.text() == nullptr ||
            *text.text() == "-")
            continue;
        if (as_unit(sheet, &text) != nullptr)
            with_units.emplace_back(i, &text);
        else
            ++others;
    }
    if (with_units.size() < 3 || with_units.size() < 4 * others) return;
    for (const auto& [i, text] : with_units) places[i] = {as_unit(sheet, text), text->row, text->column};
}

void UnitCells::gather_runs(std::int32_t sheet, std::int32_t column) {
    const std::vector<BookCell>& cells = book_.sheets[static_cast<std::size_t>(sheet)].cells;
    const std::vector<UnitPlace>& places = places_[static_cast<std::size_t>(sheet)];
    std::vector<UnitRun>& runs = runs_[static_cast<std::size_t>(sheet)][static_cast<std::size_t>(column)];
    for (const std::uint32_t i : book_.column(sheet, column)) {
        const BookCell& cell = cells[i];
        if (!is_figure(cell)) continue;
        const bool goes_on = !runs.empty() && places[runs.back().cell].text == places[i].text;
        if (goes_on)
            runs.back().last_row = cell.row;
        else
            runs.push_back({cell.row, cell.row, i});
    }
}

std::optional<UnitCell> UnitCells::of(const Spot& spot) const {
    const BookCell* cell = book_.find(spot);
    if (cell == nullptr) return std::nullopt;
    const std::vector<BookCell>& cells = book_.sheets[static_cast<std::size_t>(spot.sheet)].cells;
    const UnitPlace& place =
        places_[static_cast<std::size_t>(spot.sheet)][static_cast<std::size_t>(cell - cells.data())];
    if (place.text == nullptr) return std::nullopt;
    const Spot at{spot.sheet, place.row, place.column};
    const BookCell* holder = book_.find(at);
    const bool in_label =
        holder != nullptr && holder->text() != nullptr && *holder->text() != place.text->text;
    return UnitCell{place.text, at, place.row == spot.row && place.column > spot.column, in_label};
}

void UnitCells::look_at_run(const Area& area, const UnitRun& run, AreaUnits& found) const {
    const BookSheet& on = book_.sheets[static_cast<std::size_t>(area.sheet)];
    Spot first{area.sheet, run.first_row, on.cells[run.cell].column};
    if (run.first_row < area.first_row) {  // the run began above the area: its first number inside
        const auto inside =
            book_.column(area.sheet, first.column, area.first_row, std::min(run.last_row, area.last_row));
        const auto figure = std::find_if(inside.begin(), inside.end(),
                                         [&](std::uint32_t i) { return is_figure(on.cells[i]); });
        if (figure == inside.end()) return;
        first.row = on.cells[*figure].row;
    }
    found.has_numbers = true;
    const std::optional<UnitCell> unit = of(first);
    if (!unit) {
        if (!found.without) found.without = first;
    } else if (!found.unit) {
        found.unit = unit;
    } else if (!found.other && !same_unit(*found.unit->text->unit, *unit->text->unit)) {
        found.other = unit;
    }
}

AreaUnits UnitCells::of_area(const Area& area) const {
    AreaUnits found;
    const auto& by_column = runs_[static_cast<std::size_t>(area.sheet)];
    const auto columns = static_cast<std::int32_t>(by_column.size());
    for (std::int32_t c = area.first_column; c <= std::min(area.last_column, columns - 1); ++c) {
        const std::vector<UnitRun>& runs = by_column[static_cast<std::size_t>(c)];
        auto run = std::lower_bound(runs.begin(), runs.end(), area.first_row,
                                    [](const UnitRun& r, std::int32_t row) { return r.last_row < row; });
        for (int seen = 0; run != runs.end() && run->first_row <= area.last_row && seen < most_runs;
             ++run, ++seen)
            look_at_run(area, *run, found);
    }
    return found;
}

}  // namespace undercroft::audit
