// Formulas read into trees.
#include "addin/formula/formula.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/processor_time.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

using addin::Node;
using addin::NodeKind;
using addin::parse_formula;

namespace {

/// A formula's tree with a bracket around every operation: `(A1+(2*B$1))`; references by their parts.
std::string shown(const Node& node) {
    const auto list = [&node](const std::string& between) {
        std::vector<std::string> parts;
        for (const Node& child : node.children) parts.push_back(shown(child));
        return joined(parts, between);
    };
    switch (node.kind) {
        case NodeKind::missing:
            return "_";
        case NodeKind::number:
            return exact_text(node.number);
        case NodeKind::text:
            return '"' + node.text + '"';
        case NodeKind::error:
            return "!" + node.text;
        case NodeKind::reference:
            return "[" + node.reference.text() + "]";
        case NodeKind::name:
            return "name:" + node.text;
        case NodeKind::call:
            return node.text + "(" + list(";") + ")";
        case NodeKind::array:
            return "{" + list(";") + "}";
        case NodeKind::operation:
            return "(" + (node.children.size() == 1 ? node.text + list("") : list(node.text)) + ")";
    }
    return "?";
}

std::string read_and_shown(const std::string& formula) {
    try {
        return shown(parse_formula(formula));
    } catch (const Refused& refused) {
        CHECK(refused.cause() == Cause::value);
        return refused.what();
    }
}

/// `1+A1*1+A1*...` with that many operators.
std::string chain(int operators, const std::string& signs) {
    std::string text = "=1";
    for (int i = 0; i < operators; ++i)
        text += signs[static_cast<std::size_t>(i) % signs.size()] + std::string(i % 2 == 0 ? "A1" : "1");
    return text;
}

double seconds_to_read(const std::string& formula) {
    return processor_seconds([&] { CHECK(parse_formula(formula).kind == NodeKind::operation); }, 15);
}

}  // namespace

TEST_CASE("operators bind as in Calc") {
    for (const auto& [formula, tree] : std::vector<std::pair<std::string, std::string>>{
             {"=1+2*3", "(1+(2*3))"},
             {"=1*2+3", "((1*2)+3)"},
             {"=1-2-3", "((1-2)-3)"},
             {"=8/4/2", "((8/4)/2)"},
             {"=2^3^2", "((2^3)^2)"},
             {"=-2^2", "((-2)^2)"},
             {"=2^-1", "(2^(-1))"},
             {"=-+-1", "(-(+(-1)))"},
             {"=50%%", "(%(%50))"},
             {"=-50%", "(-(%50))"},
             {"=1+2&3+4", "((1+2)&(3+4))"},
             {"=1&2=3&4", "((1&2)=(3&4))"},
             {"=1<2=3>4", "(((1<2)=3)>4)"},
             {"=1<=2", "(1<=2)"},
             {"=1>=2", "(1>=2)"},
             {"=1<>2", "(1<>2)"},
             {"=(1+2)*3", "((1+2)*3)"},
             {"= 1 +\n2\t* 3 ", "(1+(2*3))"},
             {"=A1:B2!B1:C3~D4", "(([A1:B2]![B1:C3])~[D4])"},
             {"=(A1;B2;C3)", "(([A1]~[B2])~[C3])"},
             {"=INDEX(A1:B2;1):C3", "(INDEX([A1:B2];1):[C3])"}}) {
        CAPTURE(formula);
        CHECK(read_and_shown(formula) == tree);
    }
}

TEST_CASE("literals, names, calls and arrays") {
    for (const auto& [formula, tree] :
         std::vector<std::pair<std::string, std::string>>{{"5", "5"},
                                                          {"=.5", "0.5"},
                                                          {"=1e3", "1000"},
                                                          {"{=A1*2}", "([A1]*2)"},
                                                          {"=\"a \"\"b\"\" c\"", "\"a \"b\" c\""},
                                                          {"=\"\"", "\"\""},
                                                          {"=bed_length", "name:bed_length"},
                                                          {"=größe", "name:größe"},
                                                          {"=sum(A1;2)", "SUM([A1];2)"},
                                                          {"=uc.Pit.Volume ( 1 )", "UC.PIT.VOLUME(1)"},
                                                          {"=NOW()", "NOW()"},
                                                          {"=NOW( )", "NOW()"},
                                                          {"=IF(;1;)", "IF(_;1;_)"},
                                                          {"=F(;)", "F(_;_)"},
                                                          {"={1;-2|\"a\";+4}", "{{1;(-2)};{\"a\";(+4)}}"},
                                                          {"=#N/A", "!#N/A"},
                                                          {"=#DIV/0!", "!#DIV/0!"},
                                                          {"=#NAME?", "!#NAME?"},
                                                          {"=#REF!+1", "(!#REF!+1)"}}) {
        CAPTURE(formula);
        CHECK(read_and_shown(formula) == tree);
    }
}

TEST_CASE("references, and what only looks like one") {
    for (const auto& [formula, tree] : std::vector<std::pair<std::string, std::string>>{
             {"=A1", "[A1]"},
             {"=$b$12", "[B12]"},
             {"=AB7", "[AB7]"},
             {"=XFD1048576", "[XFD1048576]"},
             {"=XFE1", "name:XFE1"},
             {"=A1048577", "name:A1048577"},
             {"=A0", "name:A0"},
             {"=A1:B2", "[A1:B2]"},
             {"=A1:$B$2", "[A1:B2]"},
             {"=Site.B3", "[Site.B3]"},
             {"=$Site.$B$3:C4", "[Site.B3:C4]"},
             {"='Site data'.B3", "['Site data'.B3]"},
             {"='it''s'.B3", "['it''s'.B3]"},
             {"=Site.A1:Storage.B2", "[Site.A1:Storage.B2]"},
             {"=Größe.A1", "[Größe.A1]"},
             {"=_x1.A1", "[_x1.A1]"},
             {"='file:///a.ods'#$Levels.B2", "['file:///a.ods'#Levels.B2]"},
             {"=A:C", "[A:C]"},
             {"=$A:C", "[A:C]"},
             {"=A :C", "[A:C]"},
             {"=2:3", "[2:3]"},
             {"=$2:$3", "[2:3]"},
             {"=Site.A:C", "[Site.A:C]"},
             {"=XFD:XFD", "[XFD:XFD]"},
             {"=A1(2)", "A1(2)"},
             {"=A1.B", "name:A1.B"},
             {"=A1b", "name:A1b"},
             {"=LOG10(2)", "LOG10(2)"},
             {"=A:3", "(name:A:3)"},
             {"=A1:UC", "([A1]:name:UC)"},
             {"=A1:B2:C3", "([A1:B2]:[C3])"},
             {"=B#REF!", "!B#REF!"},
             {"=$#REF!$4", "!$#REF!$4"},
             {"=#REF!.B3:C4", "!#REF!.B3:C4"},
             {"=Site.#REF!5", "!Site.#REF!5"},
             {"=A1:B#REF!", "!A1:B#REF!"},
             {"=A#REF!:B2+1", "(!A#REF!:B2+1)"}}) {
        CAPTURE(formula);
        CHECK(read_and_shown(formula) == tree);
    }
}

TEST_CASE("dollar signs, whole columns and rows") {
    const addin::CellReference mixed = parse_formula("=$B3:C$4").reference;
    CHECK(mixed.first == addin::CellAddress{1, 2, true, false});
    CHECK(mixed.last == addin::CellAddress{2, 3, false, true});
    CHECK(mixed.is_range);
    CHECK_FALSE(parse_formula("=A1").reference.is_range);
    CHECK(parse_formula("=A1").reference.last == addin::CellAddress{0, 0, false, false});
    const addin::CellReference columns = parse_formula("=$A:C").reference;
    CHECK(columns.whole_columns);
    CHECK_FALSE(columns.whole_rows);
    CHECK(columns.first == addin::CellAddress{0, 0, true, true});
    CHECK(columns.last == addin::CellAddress{2, addin::most_rows - 1, false, true});
    const addin::CellReference rows = parse_formula("=$2:3").reference;
    CHECK(rows.whole_rows);
    CHECK_FALSE(rows.whole_columns);
    CHECK(rows.first == addin::CellAddress{0, 1, true, true});
    CHECK(rows.last == addin::CellAddress{addin::most_columns - 1, 2, true, false});
    CHECK(parse_formula("=Site.A1:Storage.B2").reference.last_sheet == "Storage");
    CHECK(parse_formula("='file:///a.ods'#$Levels.B2").reference.document == "file:///a.ods");
}

TEST_CASE("what is no formula is refused with a sentence") {
    for (const auto& [formula, why] : std::vector<std::pair<std::string, std::string>>{
             {"=", "it ends where a value is wanted"},
             {"=1+", "it ends where a value is wanted"},
             {"=(1", "a ')' is missing"},
             {"=1)", "cannot read ')'"},
             {"=SUM(1", "a ')' is missing behind SUM"},
             {"=SUM(1 2)", "a ')' is missing behind SUM"},
             {"={1;2", "a '}' is missing"},
             {"=\"a", "a text is not closed"},
             {"=#", "'#' is not expected"},
             {"=1e999", "a number is out of range"},
             {"=@A1", "'@' is not expected"},
             {"=1 2", "cannot read '2'"},
             {"=A1 and a long rest of it", "cannot read 'and a long rest of i'"}}) {
        CAPTURE(formula);
        CHECK(read_and_shown(formula) == "the formula cannot be read: " + why);
    }
}

TEST_CASE("nesting and the number of operators end somewhere") {
    const auto in_brackets = [](std::size_t deep) {
        return "=" + std::string(deep, '(') + "1" + std::string(deep, ')');
    };
    CHECK(read_and_shown(in_brackets(65)) == "1");
    CHECK(read_and_shown(in_brackets(67)) == "the formula cannot be read: it is nested too deep");
    CHECK(read_and_shown("=" + std::string(190, '-') + "1").ends_with(std::string(190, ')')));
    CHECK(read_and_shown("=" + std::string(201, '-') + "1") ==
          "the formula cannot be read: it is nested too deep");
    CHECK(read_and_shown(chain(2000, "+")).starts_with("((("));
    CHECK(read_and_shown(chain(2001, "+")) == "the formula cannot be read: it has too many operators");
    std::string wide = "=SUM(";
    for (int i = 0; i < 300; ++i) wide += "(1);";
    CHECK(read_and_shown(wide + "1)").starts_with("SUM(1;1;"));  // one beside the other is not deep
}

TEST_CASE("each part knows where it stands") {
    const std::string formula = "=UC.ATLEAST((C2+1); -Site.B3%)";
    const Node tree = parse_formula(formula);
    const auto text = [&](const Node& node) { return std::string(text_of_node(formula, node)); };
    CHECK(text(tree) == "UC.ATLEAST((C2+1); -Site.B3%)");
    REQUIRE(tree.children.size() == 2);
    CHECK(text(tree.children[0]) == "(C2+1)");
    CHECK(text(tree.children[1]) == "-Site.B3%");
    CHECK(text(tree.children[1].children[0].children[0]) == "Site.B3");
    const std::string of_array = "{=A1+B2}";
    CHECK(text_of_node(of_array, parse_formula(of_array).children[1]) == "B2");
    CHECK(addin::formula_body("{=A1}") == "A1");
    CHECK(addin::formula_body("=A1") == "A1");
    CHECK(addin::formula_body("{A1") == "{A1");
    std::vector<std::string> visited;
    walk(tree, [&](const Node& node) { visited.push_back(text(node)); });
    CHECK(visited.size() == 7);
    CHECK(visited.front() == text(tree));
}

TEST_CASE("columns, cells and sheets as they are written") {
    CHECK(addin::column_letters(0) == "A");
    CHECK(addin::column_letters(25) == "Z");
    CHECK(addin::column_letters(26) == "AA");
    CHECK(addin::column_letters(addin::most_columns - 1) == "XFD");
    CHECK(addin::cell_letters(1, 2) == "B3");
    CHECK(addin::sheet_prefix("Site") == "Site.");
    CHECK(addin::sheet_prefix("Site_2") == "Site_2.");
    CHECK(addin::sheet_prefix("2nd") == "'2nd'.");
    CHECK(addin::sheet_prefix("Site data") == "'Site data'.");
    CHECK(addin::sheet_prefix("it's") == "'it''s'.");
    CHECK(addin::sheet_prefix("") == "''.");
}

TEST_CASE("comparisons and calls are told apart") {
    for (const char* sign : {"=", "<>", "<", ">", "<=", ">="})
        CHECK(is_comparison(parse_formula(std::string("=1") + sign + "2")));
    for (const char* formula : {"=1+2", "=-1", "=1%", "=A1&A2", "=IF(1;2)", "=1"})
        CHECK_FALSE(is_comparison(parse_formula(formula)));
    static constexpr std::string_view names[] = {"NOW", "TODAY"};
    CHECK(calls_one_of(parse_formula("=today()"), names));
    CHECK_FALSE(calls_one_of(parse_formula("=RAND()"), names));
    CHECK_FALSE(calls_one_of(parse_formula("=NOW"), names));
}

TEST_CASE("ten times the operators take about ten times as long to read", "[timing]") {
    for (const std::string signs : {"+", "*", "+*-/", "&", "^", "=", "+-"}) {
        CAPTURE(signs);
        const double hundreds = seconds_to_read(chain(200, signs));
        const double thousands = seconds_to_read(chain(2000, signs));
        CHECK(thousands < 30 * hundreds + 0.0005);
        CHECK(thousands < 0.02);
    }
}

}  // namespace undercroft::tests
