// Lines, fields, numbers and double readings of the text files.
#include "sheets/builder/lines.hpp"

#include "sheets/builder/dual.hpp"
#include "sheets/builder/numbers.hpp"
#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Words = std::vector<std::string>;

TEST_CASE("a line that starts with spaces goes on with the one before, a remark says nothing") {
    const std::vector<Line> lines =
        lines_of("# remark\n\nfirst\n  goes on\n\tand on\r\nsecond # no remark\n##title\n");
    REQUIRE(lines.size() == 3);
    CHECK(lines[0].number == 3);
    CHECK(lines[0].text == "first goes on and on");
    CHECK(lines[1].number == 6);
    CHECK(lines[1].text == "second # no remark");
    CHECK(lines[2].number == 7);
    CHECK(lines[2].text == "##title");
    CHECK(lines_of("").empty());
    CHECK(lines_of("last without an end").size() == 1);
    CHECK_THROWS_WITH(lines_of("\n  goes on with nothing"), Catch::StartsWith("line 2: the first line"));
}

TEST_CASE("fields are parted and trimmed; a separator in quotes, braces or parentheses does not part them") {
    CHECK(fields_of(" a | b c |") == Words{"a", "b c", ""});
    CHECK(fields_of("\"a|b\" | c") == Words{"\"a|b\"", "c"});
    CHECK(fields_of("{1|2} | (3|4) | 5") == Words{"{1|2}", "(3|4)", "5"});
    CHECK(fields_of("f({1|2})|3|\"{\"|4") == Words{"f({1|2})", "3", "\"{\"", "4"});
    CHECK(fields_of("a)|b") == Words{"a)", "b"});  // closed too often
    CHECK(fields_of("a, b", ',') == Words{"a", "b"});
    CHECK(fields_of("") == Words{""});
}

TEST_CASE("the first word is taken off a text") {
    std::string text = "span  2 of";
    CHECK(take_word(text) == "span");
    CHECK(text == "2 of");
    CHECK(take_word(text) == "2");
    CHECK(take_word(text) == "of");
    CHECK(text.empty());
    CHECK(take_word(text).empty());
    std::string tab = "a\tb";
    CHECK(take_word(tab) == "a");
    CHECK(tab == "b");
    CHECK(trimmed("\t a b \r") == "a b");
    CHECK(trimmed(" ").empty());
}

TEST_CASE("a number is read with what stands behind it, or by itself") {
    REQUIRE(leading_number("305 mm").has_value());
    CHECK(leading_number("305 mm")->number == 305);
    CHECK(leading_number("305 mm")->unit == "mm");
    CHECK(leading_number("-4.1e-5 m/s")->number == -4.1e-5);
    CHECK(leading_number("12")->unit.empty());
    CHECK_FALSE(leading_number("mm 305").has_value());
    CHECK_FALSE(leading_number("").has_value());
    CHECK_FALSE(leading_number("inf m").has_value());
    CHECK_FALSE(leading_number("nan").has_value());
    CHECK_FALSE(leading_number("1e999").has_value());
    CHECK(number_in("2.50") == 2.5);
    CHECK_FALSE(number_in("2.50 m").has_value());
    CHECK_FALSE(number_in("two").has_value());
    CHECK(number_and_unit("60 %").number == 60);
    CHECK(number_and_unit("60 %").unit == "%");
    CHECK_THROWS_WITH(number_and_unit("60"), "'60' has no unit");
    CHECK_THROWS_WITH(number_and_unit("m"), "'m' is no number with a unit");
}

TEST_CASE("a field has one reading for both systems of units, or one for each") {
    CHECK(dual("305 mm // 12 in").in(System::si) == "305 mm");
    CHECK(dual("305 mm // 12 in").in(System::us) == "12 in");
    CHECK(dual("deg").in(System::si) == "deg");
    CHECK(dual("deg").in(System::us) == "deg");
    CHECK(dual("A(\"//\") // B").si == "A(\"//\")");
    CHECK(dual("A(\"//\") // B").us == "B");
    CHECK(dual("a/b/c").us == "a/b/c");
    CHECK(dual("//").si.empty());
    const Dual<std::size_t> sizes =
        each_reading(dual("a // bb"), [](const std::string& t) { return t.size(); });
    CHECK(sizes.si == 1);
    CHECK(sizes.us == 2);
}

}  // namespace undercroft::tests
