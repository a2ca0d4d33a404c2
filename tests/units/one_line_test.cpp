#include "units/one_line.hpp"

#include "tests/support/catch.hpp"

namespace undercroft::tests {

TEST_CASE("what commands a terminal is shown as its number") {
    CHECK(on_one_line("\x1b[31mred\x1b[0m") == "<U+001B>[31mred<U+001B>[0m");
    CHECK(on_one_line("\x1b]0;title\a") == "<U+001B>]0;title<U+0007>");
    CHECK(on_one_line("over\rwritten\bhere") == "over / written<U+0008>here");
    CHECK(on_one_line("\xc2\x9b"
                      "31m") == "<U+009B>31m");  // the same command in one character
    CHECK(on_one_line("\x9b"
                      "31m") == "<0x9B>31m");  // and in one byte, on terminals that are no UTF-8
    CHECK(on_one_line(std::string_view("a\0b", 3)) == "a<U+0000>b");
    CHECK(on_one_line("\x7f") == "<U+007F>");
}

TEST_CASE("a text has one line, and is read in the order in which it is written") {
    CHECK(on_one_line("Length\nNothing was found in 900 formulas") ==
          "Length / Nothing was found in 900 formulas");
    CHECK(on_one_line("a\r\n\r\nb\tc") == "a / b c");
    CHECK(on_one_line("a\xe2\x80\xa8"
                      "b\xc2\x85"
                      "c\vd") == "a / b / c / d");
    CHECK(on_one_line("\xe2\x80\xae"
                      "txt.ods") == "<U+202E>txt.ods");
    CHECK(on_one_line("\xe2\x81\xa6x\xe2\x81\xa9") == "<U+2066>x<U+2069>");
    CHECK(on_one_line("1\xe2\x80\x8b"
                      "2") == "1<U+200B>2");
}

TEST_CASE("what people write stays as it is") {
    const std::string names = "Größe, ığdır, حوض, 雨水, m³, \U0001F600";
    CHECK(on_one_line(names) == names);
    CHECK(on_one_line("") == "");
}

TEST_CASE("bytes that are no UTF-8 are shown, whatever is wrong with them") {
    CHECK(on_one_line("\xff") == "<0xFF>");
    CHECK(on_one_line("\xc3") == "<0xC3>");
    CHECK(on_one_line("\xc0\xaf") == "<0xC0><0xAF>");
    CHECK(on_one_line("\xe0\x80\xaf") == "<0xE0><0x80><0xAF>");
    CHECK(on_one_line("\xed\xa0\x80") == "<0xED><0xA0><0x80>");
    CHECK(on_one_line("\xf5\x80\x80\x80x") == "<0xF5><0x80><0x80><0x80>x");
}

}  // namespace undercroft::tests
