// The grammar of rows of one line: each kind as it is written, and each mistake refused with its line.
#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Catch::Contains;
using Words = std::vector<std::string>;

TEST_CASE("headings, paragraphs and words that stand alone") {
    CHECK(row_of("section Walls of the pit").is<rows::Section>());
    CHECK(row_of("section Walls of the pit").description == "Walls of the pit");
    CHECK(row_of("remark Type over | it").description == "Type over | it");
    CHECK(row_of("remark Type over").is<rows::Remark>());
    CHECK(row_of("caution Trench collapse kills.").is<rows::Caution>());
    CHECK(row_of("summary").is<rows::Summary>());
    CHECK(row_of("dashboard").is<rows::Dashboard>());
    CHECK(mistake_in("section") == "line 2: a text is wanted behind 'section'");
    CHECK(mistake_in("caution ") == "line 2: a text is wanted behind 'caution'");
    CHECK(mistake_in("\nsummary two") == "line 3: nothing may stand behind 'summary'");
    CHECK(mistake_in("chapter One") == "line 2: 'chapter' is no kind of row");
    CHECK(mistake_in("inputs a_b | A | a | 1 m") == "line 2: 'inputs' is no kind of row");
}

TEST_CASE("an input has a value with its unit in both systems, and a least value") {
    const Row row = row_of("input base_stone | Base stone | b | 225 mm // 9 in | Under the chambers");
    CHECK(row.line == 2);
    CHECK(row.key == "base_stone");
    CHECK(row.description == "Base stone");
    CHECK(row.symbol == "b");
    CHECK(row.note == "Under the chambers");
    CHECK(row.when.empty());
    CHECK(row.is_pair());
    const auto& input = std::get<rows::Input>(row.kind);
    CHECK(input.value.si.number == 225);
    CHECK(input.value.si.unit == "mm");
    CHECK(input.value.us.number == 9);
    CHECK(input.value.us.unit == "in");
    CHECK(input.least.si == "0");
    CHECK(row_of("input a_b | A | | 1 m").note.empty());

    const auto factor = kind_of<rows::Input>("input a_b | Factor | F | 1.5 1 >= 1 | Note");
    CHECK(factor.value.us.number == 1.5);
    CHECK(factor.value.us.unit == "1");
    CHECK(factor.least.si == "1");
    CHECK(factor.least.us == "1");
    const auto both = kind_of<rows::Input>("input a_b | Cover | c | 300 mm >= 150 // 12 in >= 6");
    CHECK(both.value.us.unit == "in");
    CHECK(both.least.si == "150");
    CHECK(both.least.us == "6");

    CHECK_THAT(mistake_in("input a_b | A | a"), Contains("line 2: wanted: input KEY | DESCRIPTION | SYMBOL"));
    CHECK_THAT(mistake_in("input a_b | A | a | 1 m | note | more"), Contains("wanted: input"));
    CHECK(mistake_in("input a_b | A | a | metre") == "line 2: 'metre' is no number with a unit");
    CHECK(mistake_in("input a_b | A | a | 5") == "line 2: '5' has no unit");
    CHECK(mistake_in("input a_b | A | a | 5 m // 16") == "line 2: '16' has no unit");
    CHECK(mistake_in("input a_b | A | a | 5 m >= few") == "line 2: 'few' is no number");
}

TEST_CASE("a key is small letters and digits with an underscore inside") {
    const std::string says = "is no key: small letters and digits with an underscore inside";
    for (const char* key : {"stone", "Base_stone", "base stone", "base-stone", "", "fläche_1", "a_b!"}) {
        CAPTURE(key);
        CHECK_THAT(mistake_in(std::string("input ") + key + " | A | a | 1 m"), Contains(says));
    }
    CHECK(mistake_in("input passing_10 | A | a | 1 m").empty());
    CHECK(mistake_in("input z9_az | A | a | 1 m").empty());
}

TEST_CASE("texts, choices and what is given") {
    const Row text = row_of("text job_name | Job | J | New job // New work | Note");
    CHECK(std::get<rows::Text>(text.kind).value.us == "New work");
    CHECK(text.symbol == "J");
    CHECK(text.note == "Note");
    CHECK_FALSE(text.is_pair());
    CHECK_THAT(mistake_in("text job_name | Job | J"), Contains("wanted: text KEY"));

    const Row choice = row_of("choice soil_type | Soil | S | B | A, A short term, B | Note");
    CHECK(std::get<rows::Choice>(choice.kind).value.si == "B");
    CHECK(std::get<rows::Choice>(choice.kind).options == Words{"A", "A short term", "B"});
    CHECK(choice.note == "Note");
    CHECK(choice.symbol == "S");
    CHECK(row_of("choice soil_type | Soil | | B | A, B").note.empty());
    CHECK(mistake_in("choice soil_type | Soil | | D | A, B") ==
          "line 2: the default 'D' is none of the options");
    CHECK(mistake_in("choice soil_type | Soil | | A // D | A, B") ==
          "line 2: the default 'D' is none of the options");
    CHECK_THAT(mistake_in("choice soil_type | Soil | | B"), Contains("wanted: choice KEY"));

    const Row given = row_of("given bed_width | Width | W | 13.5 m // 44 ft | Note");
    CHECK(std::get<rows::Given>(given.kind).value.us.number == 44);
    CHECK(given.note == "Note");
    CHECK(given.is_pair());
    CHECK(mistake_in("given bed_width | Width | W | wide") == "line 2: 'wide' is no number with a unit");
    CHECK_THAT(mistake_in("given bed_width | Width | W"), Contains("wanted: given KEY"));
}

TEST_CASE("results and words have a formula") {
    const Row result = row_of("result pit_top | Area | A_t | m2 // ft2 | UC.A(x_y; @) // UC.B(x_y; @) | L W");
    CHECK(std::get<rows::Result>(result.kind).unit.us == "ft2");
    CHECK(std::get<rows::Result>(result.kind).formula.si == "UC.A(x_y; @)");
    CHECK(std::get<rows::Result>(result.kind).formula.us == "UC.B(x_y; @)");
    CHECK(result.symbol == "A_t");
    CHECK(result.note == "L W");
    CHECK(result.is_pair());
    CHECK(mistake_in("result pit_top | Area | A | m2 | | L W") == "line 2: a formula is wanted");
    CHECK(mistake_in("result pit_top | Area | A | m2 | UC.A(@) // | L W") == "line 2: a formula is wanted");
    CHECK(mistake_in("result pit_top | Area | A | m2 | // UC.A(@) | L W") == "line 2: a formula is wanted");
    CHECK_THAT(mistake_in("result pit_top | Area | A | m2"), Contains("wanted: result KEY"));

    const Row words = row_of("words scale_text | Scale | s | \"1 : \"&plan_scale.value | Note");
    CHECK(std::get<rows::Words>(words.kind).formula.si == "\"1 : \"&plan_scale.value");
    CHECK(words.symbol == "s");
    CHECK(words.note == "Note");
    CHECK_FALSE(words.is_pair());
    CHECK(mistake_in("words scale_text | Scale | s |") == "line 2: a formula is wanted");
}

TEST_CASE("a check compares two keys, or has a formula") {
    const Row least = row_of("check gap_wide | Wide enough | row_gap >= least_gap | Common practice");
    CHECK(least.description == "Wide enough");
    CHECK(least.note == "Common practice");
    CHECK(least.symbol.empty());
    const auto demand = std::get<rows::Check>(least.kind).demand;
    REQUIRE(std::holds_alternative<rows::Comparison>(demand.si));
    CHECK(std::get<rows::Comparison>(demand.si).left == "row_gap");
    CHECK(std::get<rows::Comparison>(demand.si).right == "least_gap");
    CHECK(std::get<rows::Comparison>(demand.us).sense == rows::Comparison::Sense::at_least);

    const auto most = kind_of<rows::Check>("check gap_wide | Wide enough | row_gap <= least_gap").demand.si;
    CHECK(std::get<rows::Comparison>(most).sense == rows::Comparison::Sense::at_most);
    CHECK(std::get<rows::Comparison>(most).right == "least_gap");

    const auto late =
        kind_of<rows::Check>("check gap_wide | Wide | row_gap < least_gap if gap_counts else open").demand.si;
    CHECK(std::get<rows::Comparison>(late).sense == rows::Comparison::Sense::below);
    CHECK(std::get<rows::Comparison>(late).right == "least_gap");
    CHECK(std::get<rows::Comparison>(late).condition == "gap_counts");
    CHECK(std::get<rows::Comparison>(late).waits);

    const auto formula = kind_of<rows::Check>("check gap_wide | Wide | = IF(a_b>=1; 1; 0)").demand.si;
    REQUIRE(std::holds_alternative<rows::Ruling>(formula));
    CHECK(std::get<rows::Ruling>(formula).formula == " IF(a_b>=1; 1; 0)");

    CHECK(mistake_in("check gap_wide | Wide | row_gap = least_gap") ==
          "line 2: a check is A >= B, A <= B, A > B, A < B or = FORMULA");
    CHECK_THAT(mistake_in("check gap_wide | Wide"), Contains("wanted: check KEY"));
}

TEST_CASE("a row with a field too few or too many is refused with the form that is wanted") {
    const std::pair<const char*, const char*> longest[] = {{"input", "a_b | A | a | 1 m | note"},
                                                           {"text", "a_b | A | a | x | note"},
                                                           {"choice", "a_b | A | a | x | x, y | note"},
                                                           {"given", "a_b | A | a | 1 m | note"},
                                                           {"result", "a_b | A | a | m | UC.A(1) | note"},
                                                           {"words", "a_b | A | a | UC.A(1) | note"},
                                                           {"check", "a_b | A | = 1 | note"},
                                                           {"table", "a_b | A | 2 | x; y | UC.A(1) | note"},
                                                           {"grid", "a_b | A | x; y | note"},
                                                           {"list", "a_b | A | x; y | note"},
                                                           {"chart", "a_b | A | t_t | x, y | X | Y | Z"},
                                                           {"beside", "a_b | A | t_t | x, y | X | Y | Z"},
                                                           {"picture", "a_b | A | 0 9 0 9 | pit t_t"}};
    for (const auto& [word, fields] : longest) {
        const std::string line = word + std::string(" ") + fields;
        const std::string wanted = std::string("line 2: wanted: ") + word + " KEY | ";
        CAPTURE(line);
        CHECK(mistake_in(line).empty());
        CHECK_THAT(mistake_in(line + " | more"), Catch::StartsWith(wanted));
        const bool ends_with_note = line.ends_with("note") || line.ends_with("Z");
        const std::string shorter = line.substr(0, line.rfind(" | "));
        CHECK(mistake_in(shorter).empty() == ends_with_note);
        const std::string shortest = ends_with_note ? shorter.substr(0, shorter.rfind(" | ")) : shorter;
        CHECK_THAT(mistake_in(shortest), Catch::StartsWith(wanted));
    }
}

TEST_CASE("each kind of row knows what it is, and no other") {
    const Row row = row_of("words scale_text | Scale | s | 1");
    CHECK(row.as<rows::Words>() != nullptr);
    CHECK(row.as<rows::Result>() == nullptr);
    CHECK(columns_of(row) == nullptr);
}

}  // namespace undercroft::tests
