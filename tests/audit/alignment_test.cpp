// Which row of a workbook is which row of its template.
#include "addin/audit/book/alignment.hpp"
#include "tests/support/book_maker.hpp"
#include "tests/support/catch.hpp"

namespace undercroft::tests {

namespace {

/// A sheet with a label in each row, `-` for a blank one; each row in a style of its first letter.
audit::Book labelled(const std::string& rows) {
    BookMaker maker;
    maker.sheet("S");
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const std::string at = std::to_string(i + 1);
        if (rows[i] == '-') continue;
        maker.put("A" + at, std::string("row ") + rows[i]).put("B" + at, 1.0);
        maker.style("B" + at, rows[i] >= 'a' ? "Entry" : "Total", false);
    }
    return maker.made();
}

audit::Alignment aligned(const std::string& from, const std::string& to) {
    const audit::Book a = labelled(from);
    const audit::Book b = labelled(to);
    return align_rows(a.sheets[0], b.sheets[0]);
}

using Rows = std::vector<std::int32_t>;

}  // namespace

TEST_CASE("rows added, removed and renamed") {
    CHECK(aligned("abc", "abc").to_workbook == Rows{0, 1, 2});
    CHECK(aligned("abc", "abc").added.empty());
    CHECK(aligned("abc", "axbc").to_workbook == Rows{0, 2, 3});
    CHECK(aligned("abc", "axbc").added == Rows{1});
    CHECK(aligned("abc", "ac").to_workbook == Rows{0, -1, 1});
    CHECK(aligned("abc", "axc").to_workbook == Rows{0, 1, 2});   // renamed: as many as before
    CHECK(aligned("aBc", "aXyc").to_workbook == Rows{0, 1, 3});  // the one of the same shape
    CHECK(aligned("aBc", "ayXc").to_workbook == Rows{0, 2, 3});
    CHECK(aligned("abc", "xabc").to_workbook == Rows{1, 2, 3});
    CHECK(aligned("abc", "abcx").added == Rows{3});
    CHECK(aligned("", "ab").added == Rows{0, 1});
    CHECK(aligned("ab", "").to_workbook == Rows{-1, -1});
}

TEST_CASE("rows beyond the template's keep their distance to its end") {
    const audit::Alignment more = aligned("ab", "axb");
    CHECK(more.row(-1) == -1);
    CHECK(more.row(0) == 0);
    CHECK(more.row(1) == 2);
    CHECK(more.row(2) == 3);
    CHECK(more.row(9) == 10);
    CHECK(aligned("", "ab").row(4) == 4);
}

TEST_CASE("what is for filling in does not name a row") {
    BookMaker from;
    from.sheet("S").put("A1", "Depth").put("B1", "open").style("B1", "Entry", false).put("A2", "Width");
    BookMaker to;
    to.sheet("S")
        .put("A1", "New")
        .put("A2", "Depth")
        .put("B2", "filled in")
        .style("B2", "Entry", false)
        .put("A3", "Width");
    const audit::Book a = from.made();
    const audit::Book b = to.made();
    CHECK(align_rows(a.sheets[0], b.sheets[0]).to_workbook == Rows{1, 2});
}

}  // namespace undercroft::tests
