// Calc's error codes as a person reads them.
#include "addin/formula/cell_error.hpp"
#include "tests/support/catch.hpp"

namespace undercroft::tests {

using addin::error_meaning;
using addin::error_text;

TEST_CASE("errors are shown as Calc shows them, with what they mean") {
    CHECK(error_text(502) == "Err:502");
    CHECK(error_text(503) == "#NUM!");
    CHECK(error_text(519) == "#VALUE!");
    CHECK(error_text(524) == "#REF!");
    CHECK(error_text(525) == "#NAME?");
    CHECK(error_text(532) == "#DIV/0!");
    CHECK(error_text(addin::circular_error) == "Err:522");
    CHECK(error_text(32767) == "#N/A");
    for (const int code : {501, 502, 504, 508, 509, 510, 511, 513, 518, 522, 523, 533, 539, 540}) {
        CAPTURE(code);
        CHECK(error_text(code) == "Err:" + std::to_string(code));
        CHECK(error_meaning(code) != "see Calc's help for the code");
    }
    CHECK(error_text(599) == "Err:599");
    CHECK(error_meaning(532) == "it divides by zero or by a blank cell");
    CHECK(error_meaning(addin::circular_error) == "the formula rests on its own result");
    CHECK(error_meaning(599) == "see Calc's help for the code");
}

}  // namespace undercroft::tests
