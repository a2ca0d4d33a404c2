// The head of a sheet: title, job, what is open, the headings of the columns. What is open is counted row by
// row to the right of the reasons, so that each formula can be read by itself, each kind in a column of its
// own.
#include <algorithm>
#include <boost/algorithm/string/join.hpp>

#include "sheets/builder/fill.hpp"
#include "sheets/builder/head_rows.hpp"
#include "sheets/builder/helper_columns.hpp"

namespace undercroft::sheets {

namespace {

using boost::algorithm::join;
using Words = std::vector<std::string>;

std::string reference(int row, int column) {
    return "[." + cell_text(row, column) + "]";
}

/// The row behind the last one. Rows at the end that wait for a paste are left out: the functions that read
/// them refuse what is wrong there, and counting in them all would take longer than computing with them.
int end_of_rows(const SheetGrid& grid) {
    const auto waits = [](const auto& cell) {
        return cell.second.type == SheetCell::Type::blank && cell.second.style == "GridEntry";
    };
    const auto last = std::find_if_not(grid.cells.rbegin(), grid.cells.rend(), waits);
    return last == grid.cells.rbegin() || last == grid.cells.rend() ? grid.rows : last->first.first + 1;
}

/// The rows from the headings to the end of the sheet: a column with a heading is never blank altogether.
std::string rows_of(const SheetGrid& grid, int first_column, int last_column) {
    return "[." + cell_text(heading_row, first_column) + ":." +
           cell_text(std::max(end_of_rows(grid), first_row + 1), last_column) + "]";
}

constexpr const char* heads[] = {
    "Fails",    "Open",  "To give", "Impossible", "Not listed",   "Unusual",
    "Assumed",  "State", "Demand",  "Capacity",   "Unit of both", "Demand/capacity",
    "Decimals", "Words", "Least",   "Most",       "Usual from",   "Usual to"};

/// Whether each check fails or is open, by row.
void count_checks(CellWriter& writer) {
    std::map<int, Words> fails;
    std::map<int, Words> open;
    for (const auto& [row, column] : writer.grid().checks) {
        const std::string check = reference(row, column);
        fails[row].push_back("IF(ISERROR(" + check + ");0;(" + check + "=0)*1)");
        open[row].push_back("IF(ISERROR(" + check + ");0;(LEFT(" + check + ";4)=\"open\")*1)");
    }
    const auto put = [&](Helper helper, const std::map<int, Words>& counts) {
        for (const auto& [row, parts] : counts)
            writer.put_formula(row, helper_column(writer.sheet(), helper), "OpenCount", join(parts, "+"));
    };
    put(Helper::fails, fails);
    put(Helper::open, open);
}

/// What a sheet says of each kind that it counts: before the count, and before the list of its rows.
struct KindWords {
    const char* count;
    const char* rows;
};
constexpr KindWords kinds[counted_helpers] = {{"", "fails "},
                                              {"open: ", "open "},
                                              {"to give: ", "to give "},
                                              {"impossible: ", "impossible "},
                                              {"not in the list: ", "not in the list "},
                                              {"unusual: ", "unusual "},
                                              {"assumed: ", "assumed "}};

void put_array(CellWriter& writer, int row, int column, const std::string& formula) {
    SheetCell& cell = writer.put_formula(row, column, "JobLine", formula);
    cell.matrix_rows = cell.matrix_columns = 1;
}

/// How many of a kind there are on the sheet, in which rows, and the first of that in words.
void sum_up(CellWriter& writer, Helper helper) {
    const SheetGrid& grid = writer.grid();
    const int column = helper_column(writer.sheet(), helper);
    const KindWords& kind = kinds[static_cast<std::size_t>(helper)];
    const std::string counts = rows_of(grid, column, column);
    const std::string count = reference(state_row, column);
    writer.put_formula(state_row, column, "OpenCount", "SUM(" + counts + ")");
    put_array(writer, job_row, column,
              "IF(" + count + ">0;\"" + kind.rows + "\"&COM.MICROSOFT.TEXTJOIN(\", \";1;IF(" + counts +
                  "=1;" + rows_of(grid, ref_column, ref_column) + ";\"\"));\"\")");
    const std::string words = helper == Helper::fails
                                  ? count + "&\" of " + std::to_string(grid.checks.size()) + " checks fail\""
                                  : "\"" + std::string(kind.count) + "\"&" + count;
    writer.put_formula(title_row, column, "JobLine", "IF(" + count + ">0;" + words + ";\"\")");
}

std::string sum_of(const CellWriter& writer, Helper helper) {
    return reference(state_row, helper_column(writer.sheet(), helper));
}

/// `IF(count>0;"to give: "&count;"")`
std::string said(const std::string& count, const std::string& what) {
    return "IF(" + count + ">0;\"" + what + ": \"&" + count + ";\"\")";
}

/// The cells that show an error, and the rows where such a thing begins: a row that rests on another is no
/// cause, nor is one that waits for a blank, which counts where it is to be given.
void count_errors(CellWriter& writer) {
    const SheetGrid& grid = writer.grid();
    const int reasons = reason_column(writer.sheet());
    writer.put_formula(
        state_row, reasons, "OpenCount",
        "SUMPRODUCT(ISERROR(" + rows_of(grid, description_column, last_column(writer.sheet())) + ")*1)");
    const int states = helper_column(writer.sheet(), Helper::state);
    const std::string reason = rows_of(grid, reasons, reasons);
    writer.put_formula(title_row, reasons, "OpenCount",
                       "SUMPRODUCT((LEN(" + reason + ")>0)*(" + reason + "<>" +
                           rows_of(grid, states, states) + ")*ISERROR(SEARCH(\"rests on\";" + reason +
                           "))*ISERROR(SEARCH(\"blank\";" + reason + ")))");
}

/// `IF([.O3:.U3]>0;[.O1:.U1];"")`, in an array formula: the texts of one row of the head of which there is
/// something to say. A text that may be empty is never read by itself: a file keeps it as no result at all,
/// and an office that has not yet computed it anew reads 0.
std::string texts_that_count(const Sheet& sheet, int row) {
    const auto cells = [&](int of_row) {
        return "[." + cell_text(of_row, helper_column(sheet, Helper::fails)) + ":." +
               cell_text(of_row, helper_column(sheet, Helper::assumed)) + "]";
    };
    return "IF(" + cells(state_row) + ">0;" + cells(row) + ";\"\")";
}

/// What is open on this sheet, in words.
std::string state_in_words(const Sheet& sheet) {
    const int reasons = reason_column(sheet);
    const std::string errors = reference(state_row, reasons);
    return "COM.MICROSOFT.TEXTJOIN(\"; \";1;" + texts_that_count(sheet, title_row) + ";IF(" + errors +
           ">0;\"cells that show an error: \"&" + errors + "&\", of which begin here: \"&" +
           reference(title_row, reasons) + ";\"\"))";
}

/// How much there is to say: 0 where nothing is open.
std::string open_on_sheet(const Sheet& sheet) {
    return "SUM([." + cell_text(state_row, reason_column(sheet)) + ":." +
           cell_text(state_row, helper_column(sheet, Helper::assumed)) + "])";
}

std::string all_well(const CellWriter& writer) {
    const std::size_t checks = writer.grid().checks.size();
    return checks == 0 ? "Nothing is open"
                       : "No check of " + std::to_string(checks) + " fails, nothing is open";
}

/// Of the sheet with the summary: what is open in the whole workbook, and whether it is ready for checking.
enum Summed { fails, open, to_give, impossible, unusual, assumed, errors };

std::string whole_in_words(int whole) {
    const auto sum = [&](Summed column) { return reference(whole, symbol_column + column); };
    return "COM.MICROSOFT.TEXTJOIN(\"; \";1;" +
           join(Words{said(sum(fails), "checks that fail"), said(sum(open), "open"),
                      said(sum(to_give), "to give"), said(sum(impossible), "impossible"),
                      said(sum(unusual), "unusual"), said(sum(assumed), "assumed"),
                      said(sum(errors), "errors")},
                ";") +
           ")";
}

std::string readiness(int whole, const std::string& words) {
    const std::string all =
        "SUM([." + cell_text(whole, symbol_column) + ":." + cell_text(whole, symbol_column + errors) + "])";
    const auto sum = [&](Summed column) { return reference(whole, symbol_column + column); };
    return "IF(" + join(Words{sum(fails), sum(to_give), sum(impossible), sum(assumed), sum(errors)}, "+") +
           ">0;\"Not ready for checking\";\"Ready for checking: no check fails\")&IF(" + all +
           "=0;\"\";\" - \"&" + words + ")";
}

void fill_state(CellWriter& writer) {
    count_checks(writer);
    for (int helper = 0; helper < counted_helpers; ++helper) sum_up(writer, static_cast<Helper>(helper));
    count_errors(writer);
    const Sheet& sheet = writer.sheet();
    const int last = last_column(sheet);
    const int reasons = reason_column(sheet);
    Words all = {reference(title_row, reasons)};
    for (const Helper helper : {Helper::fails, Helper::open, Helper::to_give, Helper::impossible,
                                Helper::not_listed, Helper::assumed})
        all.push_back(sum_of(writer, helper));
    writer.put_formula(state_row, last, "OpenCount", join(all, "+"));
    writer.put_text(state_row, last - 1, "OpenLabel", "open here");
    const int whole = writer.grid().whole_workbook_row;
    const int words = helper_column(sheet, Helper::state);
    const std::string said_here = reference(state_row, words);
    put_array(writer, state_row, words, whole > 0 ? whole_in_words(whole) : state_in_words(sheet));
    put_array(writer, title_row, words,
              "COM.MICROSOFT.TEXTJOIN(\"; \";1;" + texts_that_count(sheet, job_row) + ")");
    writer.put_formula(
        job_row, reasons, "JobLine",
        whole > 0 ? readiness(whole, said_here)
                  : "IF(" + open_on_sheet(sheet) + "=0;\"" + all_well(writer) + "\";" + said_here + ")");
    // NOW() makes Calc compute the cell on opening, also where it keeps the other results of the file.
    writer.put_formula(state_row, ref_column, "State",
                       "IF(OR(ISERROR(UNDERCROFT.UC.VERSION());NOW()=0);\"The Undercroft add-in is not "
                       "installed here: the figures on this sheet are not computed and must not be used\";" +
                           reference(job_row, reasons) + ")");
}

void fill_headings(CellWriter& writer) {
    const Sheet& sheet = writer.sheet();
    for (int c = 0; c <= mark_column(sheet); ++c) writer.put(heading_row, c, "Heading");
    const std::pair<int, const char*> headings[] = {
        {ref_column, "Ref"},       {description_column, "Description"},
        {symbol_column, "Symbol"}, {value_column, "Value"},
        {unit_column, "Unit"},     {note_column, "Note or source"},
        {mark_column(sheet), "ok"}};
    for (const auto& [column, text] : headings) writer.put_text(heading_row, column, "Heading", text);
    writer.grid().cells[{heading_row, value_column}].style = "HeadingRight";
    writer.put_text(heading_row, reason_column(sheet), "ReasonHead",
                    "Reason; blank where no cell shows an error");
    int column = reason_column(sheet);
    for (const char* head : heads) writer.put_text(heading_row, ++column, "ReasonHead", head);
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
