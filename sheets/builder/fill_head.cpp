// The head of a sheet: title, job, what is open, the headings of the columns. What is open is counted row by
// row to the right of the reasons, so that each formula can be read by itself. There is a column for each
// kind: the formulas of one column are alike.
#include <algorithm>
#include <array>
#include <boost/algorithm/string/join.hpp>

#include "sheets/builder/fill.hpp"

namespace undercroft::sheets {

namespace {

constexpr int title_row = 0;
constexpr int job_row = 1;
constexpr int state_row = 2;
constexpr int heading_row = 3;
static_assert(heading_row + 1 == first_row);

std::string reference(int row, int column) {
    return "[." + cell_text(row, column) + "]";
}

/// The rows between the head and the end of the sheet.
std::string rows_of(const SheetGrid& grid, int first_column, int last_column) {
    return "[." + cell_text(first_row, first_column) + ":." +
           cell_text(std::max(grid.rows, first_row + 1), last_column) + "]";
}

/// A column of counts: its heading, and by row the formulas that are summed there.
struct Counts {
    const char* heading;
    std::map<int, std::vector<std::string>> rows;
};

/// Checks that fail or are open, then entries that cannot be right, by kind.
std::array<Counts, count_columns> counts_of(const SheetGrid& grid) {
    std::array<Counts, count_columns> counts = {
        {{"Checks open", {}}, {"Below 0", {}}, {"Below least", {}}, {"Not listed", {}}}};
    for (const auto& [row, column] : grid.checks) {
        const std::string check = reference(row, column);
        counts[0].rows[row].push_back("IF(ISERROR(" + check + ");0;(" + check + "<>1)*(" + check +
                                      "<>\"not counted\"))");
    }
    for (const auto& [cell, slip] : grid.slips)
        counts[1 + static_cast<std::size_t>(slip.kind)].rows[cell.first].push_back("IF(" + slip.when +
                                                                                   ";1;0)");
    return counts;
}

/// The cells that say what is open on a sheet; empty for a kind that the sheet has not.
struct Open {
    std::string errors;
    std::string checks;
    std::string checks_in_words;
    std::string entries;
};

/// Fills the columns of counts that have any, with their sums above.
Open fill_counts(CellWriter& writer) {
    const SheetGrid& grid = writer.grid();
    const int first = first_count_column(writer.sheet());
    std::vector<std::string> entries;
    int column = first - 1;
    for (const Counts& counts : counts_of(grid)) {
        ++column;
        if (counts.rows.empty()) continue;
        for (const auto& [row, parts] : counts.rows)
            writer.put_formula(row, column, "OpenCount", boost::algorithm::join(parts, "+"));
        writer.put_text(heading_row, column, "ReasonHead", counts.heading);
        writer.put_formula(state_row, column, "OpenCount", "SUM(" + rows_of(grid, column, column) + ")");
        if (column != first) entries.push_back(reference(state_row, column));
    }
    Open open;
    if (!grid.checks.empty()) {
        open.checks = reference(state_row, first);
        open.checks_in_words = reference(job_row, first);
        writer.put_formula(job_row, first, "JobLine",
                           open.checks + "&\" of " + std::to_string(grid.checks.size()) +
                               (grid.waits ? " checks fail or are open\"" : " checks fail\""));
    }
    if (!entries.empty()) {
        open.entries = reference(job_row, first + 1);
        writer.put_formula(job_row, first + 1, "OpenCount", boost::algorithm::join(entries, "+"));
    }
    const int reasons = reason_column(writer.sheet());
    open.errors = reference(state_row, reasons);
    writer.put_formula(
        state_row, reasons, "OpenCount",
        "SUMPRODUCT(ISERROR(" + rows_of(grid, description_column, last_column(writer.sheet())) + ")*1)");
    return open;
}

/// `IF(count>0;count&IF(count=1;" entry";" entries")&then;otherwise)`
std::string counted(const std::string& count, const std::string& one, const std::string& several,
                    const std::string& then, const std::string& otherwise) {
    return "IF(" + count + ">0;" + count + "&IF(" + count + "=1;\" " + one + "\";\" " + several + "\")&" +
           then + ";" + otherwise + ")";
}

/// The state of the sheet in words: of entries that cannot be right only these, then errors and checks.
std::string state_in_words(const Open& open, std::size_t checks) {
    const std::string all_pass =
        checks == 0 ? "\"No cell shows an error\"" : "\"No check of " + std::to_string(checks) + " fails\"";
    std::string checks_too;
    std::string otherwise = all_pass;
    if (checks > 0) {
        checks_too = "&IF(" + open.checks + ">0;\"; \"&" + open.checks_in_words + ";\"\")";
        otherwise = "IF(" + open.checks + ">0;" + open.checks_in_words + ";" + all_pass + ")";
    }
    const std::string errors =
        counted(open.errors, "cell shows", "cells show",
                "\" an error: the reason stands to the right of the row\"" + checks_too, otherwise);
    if (open.entries.empty()) return errors;
    return counted(open.entries, "entry", "entries", "\" cannot be right, marked in red\"", errors);
}

void fill_state(CellWriter& writer) {
    const Open open = fill_counts(writer);
    const int last = last_column(writer.sheet());
    const int reasons = reason_column(writer.sheet());
    std::string all = open.errors;
    for (const std::string& count : {open.checks, open.entries})
        if (!count.empty()) all += "+" + count;
    writer.put_formula(state_row, last, "OpenCount", all);
    writer.put_text(state_row, last - 1, "OpenLabel", "open");
    writer.put_formula(job_row, reasons, "JobLine", state_in_words(open, writer.grid().checks.size()));
    // NOW() makes Calc compute the cell on opening, also where it keeps the other results of the file.
    writer.put_formula(state_row, ref_column, "State",
                       "IF(OR(ISERROR(UNDERCROFT.UC.VERSION());NOW()=0);\"The Undercroft add-in is not "
                       "installed here: the figures on this sheet are not computed and must not be used\";" +
                           reference(job_row, reasons) + ")");
}

void fill_headings(CellWriter& writer) {
    const Sheet& sheet = writer.sheet();
    for (int c = 0; c <= last_column(sheet); ++c) writer.put(heading_row, c, "Heading");
    const std::pair<int, const char*> headings[] = {
        {ref_column, "Ref"},       {description_column, "Description"},
        {symbol_column, "Symbol"}, {value_column, "Value"},
        {unit_column, "Unit"},     {note_column, "Note or source"}};
    for (const auto& [column, text] : headings) writer.put_text(heading_row, column, "Heading", text);
    writer.grid().cells[{heading_row, value_column}].style = "HeadingRight";
    writer.put_text(heading_row, reason_column(sheet), "ReasonHead", "Reason, where a cell shows an error");
}

}  // namespace

void fill_head(CellWriter& writer) {
    writer.put_text(title_row, ref_column, "Title", writer.sheet().title);
    if (writer.layout().find("job_name") != nullptr) {
        const auto value = [&](const char* key) { return writer.meaning(std::string(key) + ".value"); };
        writer.put_formula(job_row, ref_column, "JobLine",
                           value("job_name") + "&\"   No. \"&" + value("job_number") + "&\"   revision \"&" +
                               value("job_revision"));
    }
    fill_state(writer);
    fill_headings(writer);
}

}  // namespace undercroft::sheets
