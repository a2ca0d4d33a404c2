// What happens in sheets that an engineer builds from nothing: blanks, headings, inserted columns, cut
// tables.
#include <algorithm>

#include "addin/catalogue/catalogue.hpp"
#include "tests/addin/desk.hpp"

namespace undercroft::tests {

namespace {

std::string why(const std::string& formula) {
    return refusal_of(formula).what();
}

}  // namespace

TEST_CASE("an optional argument that is blank is the default") {
    const FormulaDesk desk;
    const double depth = desk.number("UC.RUNOFF.DEPTH(80;\"4 in\")");
    CHECK(depth != desk.number("UC.RUNOFF.DEPTH(80;\"4 in\";\"0 %\")"));
    for (const char* blank : {"", "\"\"", "{\"\"}", "{\"\";\"%\"}", "{\"\";\"\"}"}) {
        CAPTURE(blank);
        CHECK(desk.number(std::string("UC.RUNOFF.DEPTH(80;\"4 in\";") + blank + ")") == depth);
    }
    CHECK(why("UC.RUNOFF.DEPTH(80;\"4 in\";{0.1;\"\"})").find("has a blank unit cell") != std::string::npos);
    // A 0 may be meant, or come of a blank cell: it is taken for neither.
    CHECK(why("UC.RUNOFF.DEPTH(80;\"4 in\";0)").find("abstraction ratio: 0 has no unit") !=
          std::string::npos);
}

TEST_CASE("where only a text can be meant, 0 is a blank cell and takes the default") {
    const FormulaDesk desk;
    CHECK(desk.number("UC.LOOKUP({0;0|1;1};0.5;0)") == 0.5);
    CHECK(desk.number("UC.LOOKUP({0;0|1;1};0.5;{\"\"})") == 0.5);
    const double volume = desk.number("UC.PIT.VOLUME(30;12;1;1)");
    for (const char* blank : {"0", "\"\"", "{\"\"}"})
        CHECK(desk.number(std::string("UC.PIT.VOLUME(30;12;1;1;") + blank + ")") == volume);
    const auto rows = [&desk](const std::string& formula) {
        const addin::FormulaValue value = desk.value(formula);
        return std::get<const addin::Grid*>(value.cell())->rows();
    };
    const std::string inflow =
        "UC.HYDROGRAPH.RATIONAL(0.9;\"1 ha\";\"50 mm/h\";\"20 min\";\"10 min\";\"5 min\"";
    CHECK(rows(inflow + ";{\"\"};{\"\"})") == rows(inflow + ")"));
    CHECK(rows(inflow + ";0;0)") == rows(inflow + ")"));
}

TEST_CASE("a required argument that is blank is refused by its name") {
    CHECK(why("UC.PIT.VOLUME(30;12;{\"\"};1)") == "in UC.PIT.VOLUME: depth: the cell is blank");
    CHECK(why("UC.PIT.VOLUME(30;12;{\"\";\"mm\"};1)") ==
          "in UC.PIT.VOLUME: depth: the cell of the number is blank");
    CHECK(why("UC.PIT.VOLUME(30;12;;1)") == "in UC.PIT.VOLUME: depth: is left out");
    CHECK(why("UC.CONVERT(\"1 m\";{\"\"})").find("unit: ") != std::string::npos);
}

TEST_CASE("rows asked for in the place of the units are sent on to height") {
    CHECK(
        why("UC.HYDROGRAPH.RATIONAL(0.9;\"1 ha\";\"50 mm/h\";\"20 min\";\"10 min\";\"5 min\";20)") ==
        "in UC.HYDROGRAPH.RATIONAL: units: the number 20 is no unit: for rows leave this argument empty and "
        "give them as height, ;;20");
}

TEST_CASE("units in brackets behind the headings of a table are read") {
    const FormulaDesk desk;
    const double plain = desk.number("UC.LOOKUP({\"min\";\"mm/h\"|10;100|20;60};\"15 min\";;\"mm/h\")");
    for (const char* heads : {"\"Duration (min)\";\"Intensity (mm/h)\"", "\"Duration [min]\";\"mm/h\"",
                              "\"t (min) \";\"i (mean) (mm/h)\""}) {
        CAPTURE(heads);
        CHECK(desk.number(std::string("UC.LOOKUP({") + heads + "|10;100|20;60};\"15 min\";;\"mm/h\")") ==
              plain);
    }
    CHECK(why("UC.LOOKUP({\"Duration (min)\";\"Intensity\"|10;100|20;60};\"15 min\")")
              .find("row 1, column 2: 'Intensity'") != std::string::npos);
    CHECK(why("UC.LOOKUP({\"Duration (minx)\";\"mm/h\"|10;100|20;60};\"15 min\")").find("'minx'") !=
          std::string::npos);
}

TEST_CASE("a slope of 1 in so many is its rise per run, wherever it stands") {
    const FormulaDesk desk;
    CHECK(desk.number("UC.CONVERT(\"1 in 200\";\"%\")") == 0.5);
    CHECK(desk.number("UC.CONVERT(\"1 in 200\";\"1\")") == 0.005);
    CHECK(desk.number("UC.CONVERT(\"2H:1V\";\"%\")") == 50);  // a slope in % is a rise per run
    CHECK(desk.number("UC.CONVERT(\"2H:1V\";\"1\")") == 2);
    CHECK(desk.number("UC.ATLEAST(\"1 in 200\";\"1 in 100\")") == 0);
    CHECK(desk.number("UC.ATLEAST(\"1 in 100\";\"1 in 200\")") == 1);
    CHECK(desk.number("UC.ATLEAST(\"1 in 200\";\"0.4 %\")") == 1);
    CHECK(desk.number("UC.ATMOST(\"1 in 200\";\"0.4 %\")") == 0);
    CHECK(desk.number("UC.PRODUCT(\"1 in 200\";\"10 m\";\"m\")") == 0.05);
    CHECK(desk.number("UC.PIT.AREA(30;12;2;\"1 in 2\")") == desk.number("UC.PIT.AREA(30;12;2;\"2H:1V\")"));
}

TEST_CASE("cells that are no quantity say how that comes about") {
    CHECK(why("UC.LIFTS({305;\"\";\"mm\"};\"6 in\")")
              .find("was a column inserted between the number and its unit, mm?") != std::string::npos);
    for (const char* column : {"{1|2|3}", "{1;\"m\"|2;\"m\"}"}) {
        CAPTURE(column);
        CHECK(why(std::string("UC.LIFTS(") + column + ";\"6 in\")").find("copy it down") !=
              std::string::npos);
    }
    CHECK(why("UC.LIFTS({1;2;3;4};\"6 in\")").find("side by side") != std::string::npos);
}

TEST_CASE("a sum over mixed rows names the row and what stands in it") {
    CHECK(why("UC.SUM({1;\"m\"|2;\"ft\"|\"\";\"\"|5;\"kg\"};\"m\")") ==
          "in UC.SUM: range: row 4: 5 kg is a mass; a length is wanted, such as 12 m, 305 mm or 12 ft 6 in; "
          "row 1 "
          "holds 1 m");
    CHECK(why("UC.SUM({\"\";\"\"|1;\"m\"|5;\"kg\"};\"m\")").find("; row 2 holds 1 m") != std::string::npos);
    CHECK(why("UC.LARGEST({\"m\"|1|\"2 kg\"})").find("row 3: 2 kg is a mass") != std::string::npos);
}

TEST_CASE("more than two factors") {
    const FormulaDesk desk;
    CHECK(desk.number("UC.PRODUCT.OF({2;\"m\"|3;\"m\"|0.5;\"m\"|4;\"1\"};\"m3\")") == 12);
    CHECK(desk.number("UC.PRODUCT.OF({50;\"%\"};\"%\")") == 50);
    CHECK(why("UC.PRODUCT.OF({2;\"m\"|3;\"m\"};\"kg\")").find("a mass is wanted") != std::string::npos);
    CHECK(why("UC.PRODUCT.OF({2;\"m\"|3;\"mx\"};\"m2\")").find("row 2") != std::string::npos);
    CHECK(why("UC.PRODUCT.OF({\"\";\"\"};\"m2\")").find("nothing to multiply") != std::string::npos);
}

TEST_CASE("a figure is picked from a list of things, with its unit") {
    const FormulaDesk desk;
    const std::string list =
        "UC.PICK({\"Unit\";\"Span\";\"Length (ft)\";\"Note\"|\"\";\"mm\";\"\";\"\"|\"C 750\";1300;7;\"old\""
        "|310;900;\"2.2 m\";\"\"|\"twice\";1;1;1|\"twice\";2;2;2}";
    CHECK(desk.number(list + ";\"c 750\";\"span\";\"m\")") == 1.3);
    CHECK(desk.number(list + ";\"C 750\";\"SPAN\")") == 1.3);
    CHECK(desk.number(list + ";310;\"Span\";\"in\")") == Approx(900 / 25.4));
    CHECK(desk.number(list + ";\"C 750\";\"Length\";\"ft\")") == Approx(7));
    CHECK(desk.number(list + ";\"C 750\";\"length (ft)\";\"in\")") == Approx(84));
    CHECK(desk.number(list + ";\"310\";\"Length\";\"mm\")") == Approx(2200));
    CHECK(why(list + ";\"C 75\";\"Span\")") ==
          "in UC.PICK: key: 'C 75' is not in the table; there are C 750, 310, twice, twice");
    CHECK(why(list + ";\"twice\";\"Span\")").find("key: 'twice' stands in the table twice") !=
          std::string::npos);
    CHECK(why(list + ";\"C 750\";\"Rise\")") ==
          "in UC.PICK: column: 'Rise' is not in the table; there are Span, Length (ft), Note");
    CHECK(why(list + ";\"C 750\";\"Note\")").find("table: row 3, column 4: 'old' is no quantity") !=
          std::string::npos);
    CHECK(why(list + ";310;\"Note\")").find("row 4, column 4: the cell is blank") != std::string::npos);
    CHECK(why(list + ";\"C 750\";\"Span\";\"kg\")").find("a mass is wanted") != std::string::npos);
    CHECK(why(list + ";{\"\"};\"Span\")").find("key: ") != std::string::npos);
    CHECK(why("UC.PICK(5;\"A\";\"Span\")").find("table: 5 is no table") != std::string::npos);
}

TEST_CASE("a mark between thousands is refused, whichever it is, in a text and in a pair") {
    for (const char* number : {"1'305", "1\u2019305", "1,305", "1 305 ", "1`305", "1_305", "1.305.000"}) {
        CAPTURE(number);
        CHECK(refusal_of("UC.CONVERT(\"" + std::string(number) + " mm\";\"m\")").cause() == Cause::value);
        CHECK(refusal_of("UC.CONVERT({\"" + std::string(number) + "\";\"mm\"};\"m\")").cause() ==
              Cause::value);
    }
    CHECK_THAT(why("UC.CONVERT(\"1'305 mm\";\"m\")"), Catch::Contains("type 1305 mm, or write ft for feet"));
}

TEST_CASE("a range in the place of one number says what was probably meant") {
    for (const char* column : {"{5|6}", "{5;\"m\"|6;\"m\"}"})
        CHECK_THAT(why("UC.CONVERT(" + std::string(column) + ";\"ft\")"), Catch::Contains("copy it down"));
    for (const char* wide : {"{5;6;7}", "{5;6;\"m\"|5;6;\"m\"}", "{\"m\";5;\"m\"}", "{5;\"m\";6;\"m\"}"}) {
        CAPTURE(wide);
        const std::string says = why("UC.CONVERT(" + std::string(wide) + ";\"ft\")");
        CHECK_THAT(says, Catch::Contains("or a number and its unit side by side"));
        CHECK_THAT(says, !Catch::Contains("copy it down") && !Catch::Contains("column inserted"));
    }
}

TEST_CASE("the share in a table comes in the unit asked for, or plain") {
    const FormulaDesk desk;
    const auto reliability = [&desk](const std::string& units) {
        return desk.number(
            "INDEX(UC.REUSE.YIELD({\"mm\"|3|0|0|8|1|0|6|0};\"1000 m2\";1;\"5 m3\";\"2 m3\";\"after "
            "spillage\";"
            "\"20 %\";;;" +
            units + ");2;7)");
    };
    CHECK(reliability("") == Approx(0.6875).epsilon(1e-12));
    CHECK(reliability("\";;;;;;1;1\"") == Approx(0.6875).epsilon(1e-12));
    CHECK(reliability("\";;;;;;%;%\"") == Approx(68.75).epsilon(1e-12));
    CHECK_THAT(why("UC.REUSE.YIELD({\"mm\"|3|0};1000;1;5;2;;;;;\";;;;;;m\")"),
               Catch::Contains("'m' is a unit of a length; column 7 is a number"));
    CHECK_THAT(why("UC.REUSE.YIELD({\"mm\"|3|0};1000;1;5;2;;;;;\"1\")"),
               Catch::Contains("column 1 is a volume"));
}

TEST_CASE("an inflow that is plainly cut off is not routed") {
    const std::string bed = "{\"m\";\"m3\"|0;0|2;200}";
    const std::string pool = bed + ";{\"m\";\"L/s\"|0;0|2;40}";
    const std::string outlets = ";{\"orifice\";\"0 m\";\"100 mm\"};{\"min\";\"m\"|0;0};\"1 min\")";
    const std::pair<std::string, std::string> routings[] = {
        {"UC.ROUTE.DEPTH(", ";" + pool + ";\"1 min\")"}, {"UC.ROUTE.POOL(", ";" + pool + ";\"1 min\")"},
        {"UC.ROUTE.SPILL(", ";" + pool + ";\"1 min\")"}, {"UC.ROUTE.MARKS(", ";" + pool + ")"},
        {"UC.ROUTE.TAILWATER(", ";" + bed + outlets},
    };
    const FormulaDesk desk;
    for (const auto& [call, rest] : routings) {
        CAPTURE(call);
        CHECK_NOTHROW(desk.value(call + "{\"min\";\"L/s\"|0;0|10;100|20;60|30;5}" + rest));
        CHECK_THAT(why(call + "{\"min\";\"L/s\"|0;0|10;100|20;60}" + rest),
                   Catch::Contains("in its last row is 60 % of its peak: the table is cut off"));
        CHECK_THAT(why(call + "{\"min\";\"L/s\"|0;0|10;100|20;6}" + rest),
                   Catch::Contains("in its last row is 6 % of its peak"));
    }
    // Whatever takes a hydrograph to route it is in this list.
    for (const addin::Function& function : addin::all_functions()) {
        if (function.parameters.empty() || function.parameters.front().name != "inflow") continue;
        const bool is_listed =
            std::any_of(std::begin(routings), std::end(routings),
                        [&](const auto& routing) { return routing.first == function.name + "("; });
        CAPTURE(function.name);
        CHECK((is_listed || !function.parameters.front().type.is_range()));
    }
}

}  // namespace undercroft::tests
