// Rows that gather what other sheets say: what is open on each, and every check with its numbers.
#include <algorithm>
#include <boost/algorithm/string/join.hpp>

#include "sheets/builder/fill.hpp"
#include "sheets/builder/formula_text.hpp"
#include "sheets/builder/head_rows.hpp"
#include "sheets/builder/helper_columns.hpp"

namespace undercroft::sheets {

namespace {

/// A column of the summary: its head, and the helpers of a sheet that it counts.
struct Counted {
    int column;
    const char* head;
    std::vector<Helper> helpers;
};

const std::vector<Counted>& counted_columns() {
    static const std::vector<Counted> columns = {
        {symbol_column, "Fail", {Helper::fails}},
        {symbol_column + 1, "Open", {Helper::open}},
        {symbol_column + 2, "To give", {Helper::to_give}},
        {symbol_column + 3, "Impossible", {Helper::impossible, Helper::not_listed}},
        {symbol_column + 4, "Unusual", {Helper::unusual}},
        {symbol_column + 5, "Assumed", {Helper::assumed}}};
    return columns;
}
constexpr int errors_column = symbol_column + 6;

/// The cell of another sheet's head that counts, or that lists the rows.
std::string head_cell(const CellWriter& writer, const Sheet& other, int row, int column) {
    return writer.cell_reference(other.name, row, column);
}

void put_counts(CellWriter& writer, const Sheet& other, int at) {
    for (const Counted& counted : counted_columns()) {
        std::vector<std::string> cells;
        for (const Helper helper : counted.helpers)
            cells.push_back(head_cell(writer, other, state_row, helper_column(other, helper)));
        writer.put_formula(at, counted.column, "SummaryCount", boost::algorithm::join(cells, "+"));
    }
    writer.put_formula(at, errors_column, "SummaryCount",
                       head_cell(writer, other, title_row, reason_column(other)));
}

constexpr int most_lines = 2;
constexpr int most_characters = 160;  // on two lines, with the words that say that there is more

/// "fails Gr12, Gr14; assumed Si3": where it is, as the sheet itself lists it, as far as there is room.
std::string where_on(const CellWriter& writer, const Sheet& other, const std::string& room) {
    const std::string sheet = "[" + (other.name == writer.sheet().name ? "" : "$" + other.name) + ".";
    const auto cell = [&](int row, Helper helper) {
        return cell_text(row, helper_column(other, helper), true);
    };
    const std::string list = sheet + cell(title_row, Helper::state) + "]";
    return "IF(SUMPRODUCT(" + sheet + cell(state_row, Helper::fails) + ":." +
           cell(state_row, Helper::assumed) + "])=0;\"\";IF(LEN(" + list + ")<=" + room + ";" + list +
           ";LEFT(" + list + ";FIND(\",\";" + list + "&\",\";" + room +
           ")-1)&\" ... and more on the sheet\"))";
}

/// Entries and checks of a sheet, each of which may have to be listed.
int most_listed(const Sheet& sheet) {
    int rows = 0;
    for (const Row& row : sheet.rows) {
        if (const auto* list = row.as<rows::List>()) rows += static_cast<int>(list->items.size());
        if (const auto* grid = row.as<rows::Grid>()) rows += static_cast<int>(grid->items.size());
        if (row.is<rows::Input>() || row.is<rows::Text>() || row.is<rows::Choice>() || row.is<rows::Check>())
            ++rows;
    }
    return rows;
}

void put_list_row(CellWriter& writer, const Sheet& other, int at, const std::string& room_cell) {
    constexpr std::size_t reference = 6;  // "Si12, "
    const int columns = last_column(writer.sheet()) - symbol_column + 1;
    writer.put_reference(at);
    writer.put_text(at, description_column, "Description", other.name).columns =
        symbol_column - description_column;
    writer.put_formula(at, symbol_column, "Words8", where_on(writer, other, room_cell)).columns = columns;
    const std::string room(static_cast<std::size_t>(most_listed(other)) * reference, '0');
    writer.set_height(at, 1, std::clamp(lines_of_text(room, columns, small_pt), 1, most_lines));
}

}  // namespace

void fill_summary(CellWriter& writer, const Selection& selection, int at) {
    const int words = symbol_column - description_column;
    writer.put_text(at, description_column, "TableHeadLeft", "Sheet").columns = words;
    for (const Counted& counted : counted_columns())
        writer.put_text(at, counted.column, "TableHead", counted.head);
    writer.put_text(at, errors_column, "TableHead", "Errors");
    const int first = ++at;
    for (const Sheet& other : selection.sheets()) {
        writer.put_reference(at);
        writer.put_text(at, description_column, "Description", other.title).columns = words;
        put_counts(writer, other, at);
        writer.set_height(at, lines_of_text(other.title, words));
        ++at;
    }
    writer.put_reference(at);
    writer.put_text(at, description_column, "Description", "The whole workbook").columns = words;
    for (int column = symbol_column; column <= errors_column; ++column)
        writer.put_formula(at, column, "SummaryCount",
                           "SUM([." + cell_text(first, column) + ":." + cell_text(at - 1, column) + "])");
    writer.grid().whole_workbook_row = at;
    ++at;
    writer.put_text(at, description_column, "TableHeadLeft", "Where").columns = words;
    writer.put_text(at, symbol_column, "TableHeadLeft", "Rows, by the reference at their left edge").columns =
        last_column(writer.sheet()) - symbol_column + 1;
    const int kept = helper_column(writer.sheet(), Helper::kept_number);
    writer.put_number(at, kept, "Kept", most_characters);
    const std::string room = "[." + cell_text(at, kept, true) + "]";
    for (const Sheet& other : selection.sheets()) put_list_row(writer, other, ++at, room);
}

namespace {

/// What stands on the row of a check: its numbers and its verdict.
struct CheckNumbers {
    std::string demand;
    std::string capacity;
    std::string unit;
    std::string ratio;
    std::string verdict;
};

// The columns of the table of all checks.
constexpr int sheet_at = symbol_column;
constexpr int demand_at = symbol_column + 1;
constexpr int capacity_at = symbol_column + 2;
constexpr int unit_at = symbol_column + 3;
constexpr int ratio_at = symbol_column + 4;
constexpr int verdict_at = symbol_column + 5;

void put_check(CellWriter& writer, const Sheet& other, const Row& row, const CheckNumbers& numbers, int at) {
    const int words = symbol_column - description_column;
    writer.put_reference(at);
    writer.put_text(at, description_column, "Description", row.description).columns = words;
    writer.put_text(at, sheet_at, "Description", other.name);
    const std::pair<int, std::string> cells[] = {
        {demand_at, numbers.demand}, {capacity_at, numbers.capacity}, {ratio_at, numbers.ratio}};
    for (const auto& [column, formula] : cells)
        if (formula.empty())
            writer.put_text(at, column, "SummaryDash", "-");
        else
            writer.put_formula(at, column, "Number", formula);
    if (!numbers.unit.empty()) writer.put_formula(at, unit_at, "UnitLink", numbers.unit);
    writer.put_formula(at, verdict_at, "Verdict", numbers.verdict).columns = 2;
    writer.put_reason(at, {verdict_at});
    writer.set_height(at, lines_of_text(row.description, words));
}

CheckNumbers numbers_of(const CellWriter& writer, const Sheet& other, const Row& row) {
    const Place& place = writer.place_of(row.line, row.key);
    const auto cell = [&](Helper helper) {
        return writer.cell_reference(other.name, place.row, helper_column(other, helper));
    };
    CheckNumbers numbers;
    numbers.verdict = writer.cell_reference(other.name, place.row, value_column);
    const rows::Demand& demand = row.as<rows::Check>()->demand.in(writer.system());
    if (const auto* ruling = std::get_if<rows::Ruling>(&demand); ruling != nullptr && !ruling->numbers)
        return numbers;
    numbers.demand = cell(Helper::demand);
    numbers.capacity = cell(Helper::capacity);
    numbers.unit = "TRIM(" + cell(Helper::check_unit) + ")";
    numbers.ratio = cell(Helper::ratio);
    return numbers;
}

/// Of a list of which each item is checked: how many of the items there are pass.
CheckNumbers numbers_of_list(const Row& row, const Column& column, int at) {
    const std::string verdicts = row.key + "_" + column.name;
    CheckNumbers numbers;
    numbers.demand = "ROWS(" + verdicts + ")";
    numbers.capacity = "COUNTIF(" + verdicts + ";1)";
    numbers.unit = "\"each\"";
    numbers.ratio =
        "IFERROR([." + cell_text(at, demand_at) + "]/[." + cell_text(at, capacity_at) + "];\"-\")";
    numbers.verdict =
        "IF(COUNTIF(" + verdicts + ";0)>0;0;IF(COUNTIF(" + verdicts + ";\"open\")>0;\"open\";1))";
    return numbers;
}

}  // namespace

/// Every check: what it is, what it demands, what there is, their ratio, its verdict.
void fill_dashboard(CellWriter& writer, const Selection& selection, int at) {
    const std::pair<int, const char*> heads[] = {
        {demand_at, "Demand"}, {capacity_at, "Capacity"}, {ratio_at, "Ratio"}};
    writer.put_text(at, description_column, "TableHeadLeft", "Check").columns =
        symbol_column - description_column;
    for (const auto& [column, head] : heads) writer.put_text(at, column, "TableHead", head);
    writer.put_text(at, sheet_at, "TableHeadLeft", "Sheet");
    writer.put_text(at, unit_at, "TableHeadLeft", "Unit");
    writer.put_text(at, verdict_at, "TableHeadMiddle", "Verdict").columns = 2;
    for (const Sheet& other : selection.sheets())
        for (const Row& row : other.rows) {
            const Column* column = verdict_column(row);
            if (!row.is<rows::Check>() && column == nullptr) continue;
            ++at;
            put_check(writer, other, row,
                      column == nullptr ? numbers_of(writer, other, row) : numbers_of_list(row, *column, at),
                      at);
        }
}

}  // namespace undercroft::sheets
