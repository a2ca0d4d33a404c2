// What a formula rests on, and what it does with it.
#include "addin/audit/book/as_typed.hpp"
#include "addin/audit/book/unsteady.hpp"
#include "addin/audit/book/uses.hpp"
#include "tests/support/book_maker.hpp"
#include "tests/support/catch.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

using audit::Use;
using audit::UseRole;

namespace {

BookMaker sheets() {
    BookMaker maker;
    maker.sheet("Other").put("A1", 1.0);
    maker.sheet("S").put("A1", 1.0).put("B1", "m").put("A2", 2.0).put("B2", "m");
    maker.name("bed", "$S.$A$1:$B$1").name("twice", "$S.$A$1*2").name("round", "round+1").name("bad", "=)(");
    return maker;
}

std::string role_text(UseRole role) {
    switch (role) {
        case UseRole::link:
            return "link";
        case UseRole::operand:
            return "operand";
        case UseRole::argument:
            return "argument";
        case UseRole::passed:
            return "passed";
        case UseRole::compared:
            return "compared";
        case UseRole::text:
            return "text";
        case UseRole::observed:
            return "observed";
    }
    return "?";
}

/// `A1 operand, B2 passed 2 guarded`: each use with its role, its place among arguments, and whether an IF
/// asked before.
std::string uses(const std::string& formula) {
    BookMaker maker = sheets();
    maker.formula("J9", formula, 1.0);
    const audit::Book book = maker.made();
    const audit::Names names(book);
    const audit::Formulas formulas(book);
    const audit::FormulaCell* cell = formulas.find(spot_of("J9", 1));
    REQUIRE(cell != nullptr);
    std::vector<std::string> all;
    for (const Use& use : uses_of(book, names, formulas.group_of(*cell), cell->at)) {
        std::string text = book.text_from(1, use.area) + " " + role_text(use.role);
        if (use.call != nullptr) text += " " + std::to_string(use.place);
        if (use.guarded) text += " guarded";
        all.push_back(text);
    }
    return joined(all, ", ");
}

}  // namespace

TEST_CASE("each cell that a formula rests on, and what is done with it") {
    for (const auto& [formula, expected] : std::vector<std::pair<std::string, std::string>>{
             {"=5", ""},
             {"=A1", "A1 link"},
             {"=Other.A1", "Other.A1 link"},
             {"=A1:B2", "A1:B2 link"},
             {"=A1+B1*2", "A1 operand, B1 operand"},
             {"=-A1", "A1 operand"},
             {"=A1>B1", "A1 operand, B1 operand"},
             {"=A1=\"x\"", "A1 compared"},
             {"=\"x\"<>A1", "A1 compared"},
             {"=A1+\"x\"", "A1 operand"},
             {"=A1&B1", "A1 text, B1 text"},
             {"=(A1~B1)", "A1 link, B1 link"},
             {"=A1:B2!B1", "A1:B2 link, B1 link"},
             {"=INDEX(A1:B2;1):C3", "A1:B2 passed 0, C3 link"},
             {"=SUM(bed:C3)", "A1:B1 passed 0, C3 passed 0"},
             {"=SUM(A1:A2;B1)", "A1:A2 passed 0, B1 passed 1"},
             {"=SUM(A1+1)", "A1 operand"},
             {"=UC.PRODUCT(A1:B1;A2:B2)", "A1:B1 argument 0, A2:B2 argument 1"},
             {"=TEXT(A1;\"0\")", "A1 text 0"},
             {"=COUNTIF(A1:A2;1)", "A1:A2 compared 0"},
             {"=ROWS(A1:A2)", "A1:A2 observed 0"},
             {"=ISERROR(A1+B1)", "A1 observed, B1 observed"},
             {"=ISERROR(SUM(A1))", "A1 observed 0"},
             {"=UC.WHY(A1)", "A1 observed 0"},
             {"=bed", "A1:B1 link"},
             {"=UC.PRODUCT(bed;2)", "A1:B1 argument 0"},
             {"=twice", "A1 operand"},
             {"=twice+1", "A1 operand"},
             {"=unknown+A1", "A1 operand"},
             {"=bad+A1", "A1 operand"},
             {"=round", ""},
             {"='file:///a.ods'#$S.A1", ""},
             {"=SUM(Other.A1:S.A1)", "Other.A1 passed 0, A1 passed 0"},
             {"=IF(A1>0;B1;C1)", "A1 operand, B1 passed 1, C1 passed 2"},
             {"=IF(C9=\"\";0;C9*2)", "C9 compared, C9 operand guarded"},
             {"=IF(A1=\"\";A2;A1)", "A1 compared, A2 passed 1, A1 passed 2 guarded"},
             {"=IF(ISBLANK(C9);A1;B1)", "C9 compared 0, A1 passed 1 guarded, B1 passed 2 guarded"},
             {"=IF(ISNUMBER(A1);A1;A2)+A1", "A1 observed 0, A1 passed 1 guarded, A2 passed 2, A1 operand"},
             {"=SUM(IF(ISTEXT(A1);A1;0);A1)", "A1 observed 0, A1 passed 1 guarded, A1 passed 1"}}) {
        CAPTURE(formula);
        CHECK(uses(formula) == expected);
    }
}

TEST_CASE("functions that look at cells without taking their values") {
    for (const char* name :
         {"ISERROR", "ISERR",  "ISNA",   "ISREF",   "ISFORMULA",  "ISTEXT",    "ISNUMBER", "ISLOGICAL",
          "ROW",     "ROWS",   "COLUMN", "COLUMNS", "CELL",       "FORMULA",   "COUNT",    "COUNTA",
          "SHEET",   "SHEETS", "AREAS",  "TYPE",    "ERROR.TYPE", "ERRORTYPE", "ADDRESS",  "INFO"}) {
        CAPTURE(name);
        CHECK(uses(std::string("=") + name + "(A1)") == "A1 observed 0");
    }
    for (const char* name : {"ISBLANK", "COUNTBLANK", "COUNTIF", "COUNTIFS"}) {
        CAPTURE(name);
        CHECK(uses(std::string("=") + name + "(A1)") == "A1 compared 0");
    }
    for (const char* name : {"TEXT", "CONCATENATE", "CONCAT", "TEXTJOIN", "T", "LEN", "UPPER", "LOWER",
                             "TRIM", "LEFT", "RIGHT", "MID", "HYPERLINK", "FIND", "SEARCH"}) {
        CAPTURE(name);
        CHECK(uses(std::string("=") + name + "(A1)") == "A1 text 0");
    }
    CHECK_FALSE(audit::only_observes(addin::parse_formula("=SUM(A1)")));
    CHECK_FALSE(audit::only_observes(addin::parse_formula("=ROWS")));
}

TEST_CASE("values that change by themselves, and those that ask their surroundings") {
    const auto changes = [](const char* formula) {
        return audit::changes_by_itself(addin::parse_formula(formula));
    };
    for (const char* name :
         {"NOW", "TODAY", "RAND", "RANDBETWEEN", "RANDARRAY", "RAND.NV", "RANDBETWEEN.NV"}) {
        CAPTURE(name);
        CHECK(changes((std::string("=1+") + name + "(1;2)").c_str()));
    }
    for (const char* formula :
         {"=NOW()=0", "=TODAY()<>0", "=NOW()>0", "=NOW()<0", "=IF(NOW()=0;1;2)", "=A1+1", "=NOW"}) {
        CAPTURE(formula);
        CHECK_FALSE(changes(formula));
    }
    for (const char* formula : {"=NOW()=1", "=NOW()+0", "=0=NOW()", "=RAND()=0", "=IF(NOW()=0;NOW();2)"}) {
        CAPTURE(formula);
        CHECK(changes(formula));
    }
    for (const char* formula : {"=CELL(\"filename\")", "=1+INFO(\"system\")"})
        CHECK(audit::asks_surroundings(addin::parse_formula(formula)));
    CHECK_FALSE(audit::asks_surroundings(addin::parse_formula("=SUM(A1)")));
    CHECK(audit::tells_version(addin::parse_formula("=UC.VERSION()")));
    CHECK(audit::tells_version(addin::parse_formula("=UC.CATALOGUE()")));
    CHECK_FALSE(audit::tells_version(addin::parse_formula("=UC.SUM(A1:B2)")));
    CHECK_FALSE(audit::tells_version(addin::parse_formula("=VERSION")));
}

TEST_CASE("a formula as a person types it") {
    using audit::as_typed;
    CHECK(as_typed("=UNDERCROFT.UC.PITVOLUME(A1)+1") == "=UC.PIT.VOLUME(A1)+1");
    CHECK(as_typed("=SUM(A1;uc.sum(B1:C2))") == "=SUM(A1;UC.SUM(B1:C2))");
    CHECK(as_typed("=UNDERCROFT.UC.PITVOLUME") == "=UNDERCROFT.UC.PITVOLUME");
    CHECK(as_typed("=\"UNDERCROFT.UC.SUM(\"&'UNDERCROFT.UC.SUM(x'.A1") ==
          "=\"UNDERCROFT.UC.SUM(\"&'UNDERCROFT.UC.SUM(x'.A1");
    CHECK(as_typed("=\"not closed") == "=\"not closed");
    CHECK(as_typed("=\"\"&UNDERCROFT.UC.PITVOLUME(A1)") == "=\"\"&UC.PIT.VOLUME(A1)");
    CHECK(as_typed("").empty());
}

}  // namespace undercroft::tests
