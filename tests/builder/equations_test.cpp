// Equations of the functions in the notes of rows, and no note that repeats one by hand.
#include "sheets/builder/equations.hpp"

#include <algorithm>

#include "sheets/builder/files.hpp"
#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Catch::Contains;

namespace {

const char* const equations_text =
    "# function | symbols of its arguments | equation\n"
    "UC.BED.LENGTH | l; e;  | L = l + 2 e\n"
    "UC.X.LOG | a; b;  | x = a log|b| where a > 0\n";

std::vector<Sheet> sheet_with(const std::string& note, const std::string& formula) {
    return {
        read_sheet("sheet Pit | A pit\n"
                   "input row_length | Row | l_r | 30 m |\n"
                   "input end_margin | Margin | e_m | 300 mm |\n"
                   "input no_symbol | Margin | | 300 mm |\n"
                   "result bed_length | Length | L | m | " +
                   formula + " | " + note + "\n")};
}

std::string note_of(const std::string& note, const std::string& formula) {
    std::vector<Sheet> sheets = sheet_with(note, formula);
    fill_equations(sheets, read_equations(equations_text));
    return sheets.front().rows.back().note;
}

std::string without_spaces(std::string text) {
    std::erase(text, ' ');
    return text;
}

}  // namespace

TEST_CASE("a note takes the equation of the function that its row calls, in the sheet's symbols") {
    CHECK(note_of("{equation}", "UC.BED.LENGTH(row_length; end_margin; @)") == "l_r + 2 e_m");
    CHECK(note_of("{equation}; with care", "UC.BED.LENGTH(row_length; end_margin; @)") ==
          "l_r + 2 e_m; with care");
    CHECK(note_of("Common practice", "UC.BED.LENGTH(row_length; end_margin; @)") == "Common practice");
    CHECK(note_of("{equation}", "UC.X.LOG(end_margin; row_length; @)") == "e_m log|l_r| where e_m > 0");
}

TEST_CASE("a note that wants an equation where there is none stops the builder, and says in which row") {
    for (const char* formula :
         {"UC.BED.LENGTH(no_symbol; end_margin; @)", "UC.BED.LENGTH(\"30 m\"; end_margin; @)",
          "UC.BED.LENGTH(row_length; end_margin; @)+1", "UC.NO.SUCH(row_length; end_margin; @)",
          "UC.BED.LENGTH(row_length; end_margin; @)-UC.BED.LENGTH(row_length; end_margin; @)"}) {
        CAPTURE(formula);
        CHECK_THROWS_WITH(note_of("{equation}", formula),
                          Contains("sheet Pit, line 5") && Contains("no equation") && Contains("bed_length"));
    }
    CHECK_THROWS_WITH(read_equations("UC.BED.LENGTH | L = l + 2 e\n"), Contains("line 1"));
}

TEST_CASE("no note of a sheet repeats by hand the equation that the catalogue has") {
    const std::filesystem::path project = PROJECT_FOLDER;
    const std::vector<Sheet> sheets = read_sheets(project / "sheets/text");
    const Equations equations = read_equations(read_file(project / "sheets/equations.txt"));
    const auto symbols = symbols_of(sheets);
    int taken = 0;
    for (const Sheet& sheet : sheets)
        for (const Row& row : sheet.rows) {
            if (row.note.find(equation_word) != std::string::npos) ++taken;
            const std::string equation = without_spaces(equation_of(row, symbols, equations));
            if (equation.size() < 3) continue;
            CAPTURE(sheet.name, row.key, row.note, equation);
            CHECK_FALSE(without_spaces(row.note).starts_with(equation));
        }
    CHECK(taken >= 48);
}

}  // namespace undercroft::tests
