// The workbook of reuse with the daily rain of a real station, and with that of a hundred years.
#include <algorithm>
#include <filesystem>

#include "sheets/builder/files.hpp"
#include "sheets/office/job_filler.hpp"
#include "tests/office/desk.hpp"
#include "tests/support/csv.hpp"

namespace undercroft::tests {

namespace {

namespace fs = std::filesystem;
using TextRows = std::vector<std::vector<std::string>>;

/// Daily rain of Seattle, 2012 to 2015, in mm.
TextRows seattle_rain() {
    TextRows rows;
    for (const CsvRow& row : csv_rows("tests/data/seattle-weather.csv", 1461))
        rows.push_back({row.text("precipitation")});
    return rows;
}

/// The workbook, and what is typed into it.
class ReuseBook {
public:
    ReuseBook()
        : sheets_(sheets::read_sheets(fs::path(PROJECT_FOLDER) / "sheets" / "text")),
          document_(the_office().open(fs::path(TEMPLATES_FOLDER) / "reuse.ots")),
          changes_(document_, sheets_) {}

    /// A roof of 1000 m2, a share of 0.9, a demand of 2 m3 a day, a store of 20 m3.
    void fill(const TextRows& rain, const std::string& first_day, const std::string& last_day) {
        sheets::JobFiller filler(document_, sheets_);
        filler.type_rows("day_rain", rain);
        filler.type("first_day", first_day);
        filler.type("last_day", last_day);
        filler.type_rows("collect_list", {{"1000 m2", "0.9"}});
        filler.type("first_flush", "0 mm");
        filler.type_rows("demand_list", TextRows(12, {"2 m3"}));
        filler.type("storage_kept", "20 m3");
        document_.recalculate();
    }
    /// What is typed over it, and undone again.
    sheets::JobFiller& changes() { return changes_; }
    [[nodiscard]] const sheets::Document& document() const { return document_; }
    [[nodiscard]] double value(const std::string& key, int row = 0) const {
        return document_.named(key, 0, row)->getValue();
    }
    [[nodiscard]] std::string verdict(const std::string& key) const {
        return sheets::shown(document_.named(key));
    }

private:
    std::vector<sheets::Sheet> sheets_;
    sheets::Document document_;
    sheets::JobFiller changes_;
};

}  // namespace

// A loop of its own over the same file gave these totals, which the core is held against too.
TEST_CASE("four years of a real station's rain, by the workbook of reuse") {
    ReuseBook book;
    book.fill(seattle_rain(), "2012-01-01", "2015-12-31");
    CHECK(book.value("day_count") == 1461);
    CHECK(book.value("day_span") == 1461);
    CHECK(book.value("day_years") == Approx(4).epsilon(1e-12));
    CHECK(book.value("day_mean") * 4 == Approx(4426.0).epsilon(1e-12));
    CHECK(book.value("day_wettest") == Approx(55.9));
    CHECK(book.value("collect_reduced") == Approx(900).epsilon(1e-12));
    const auto total = [&](const char* column) {
        return book.value(std::string("reuse_totals_") + column, 1);
    };
    CHECK(total("inflow") == Approx(3983.4).epsilon(1e-12));
    CHECK(total("demand") == Approx(2922).epsilon(1e-12));
    CHECK(total("yield") == Approx(1988.88).epsilon(1e-9));
    CHECK(total("spill") == Approx(1983.17).epsilon(1e-9));
    CHECK(total("end") == Approx(11.35).epsilon(1e-9));
    CHECK(book.value("yield_year") == Approx(1988.88 / 4).epsilon(1e-9));
    CHECK(book.value("topup_year") == Approx((2922 - 1988.88) / 4).epsilon(1e-9));
    CHECK(book.value("spill_year") == Approx(1983.17 / 4).epsilon(1e-9));
    CHECK(book.value("reuse_by_volume") == Approx(68.065708).epsilon(1e-8));
    CHECK(book.value("reuse_in_time") == Approx(64.955510).epsilon(1e-8));
    CHECK(book.value("store_wanted") == Approx(13.0978723404).epsilon(1e-9));  // 60 % by volume
    CHECK(book.value("balance_error") < 1e-9);
    CHECK(book.verdict("days_whole") == "PASS");
    CHECK(book.verdict("days_enough") == "FAIL");
    CHECK(book.verdict("balance_closes") == "PASS");
    // The curve passes through this store, and never falls.
    CHECK(book.value("reuse_curve_store", 5) == Approx(20).epsilon(1e-12));
    CHECK(book.value("reuse_curve_volume", 5) == Approx(68.065708).epsilon(1e-8));
    for (int row = 2; row <= 20; ++row) {
        CAPTURE(row);
        CHECK(book.value("reuse_curve_volume", row) >= book.value("reuse_curve_volume", row - 1));
    }

    book.changes().type("reuse_rule", "before spillage");
    CHECK(total("yield") == Approx(2082.71).epsilon(1e-9));
    CHECK(book.value("reuse_by_volume") == Approx(71.276865).epsilon(1e-8));
    book.changes().undo();
    book.changes().type("reliable_by", "in time");
    CHECK(book.value("reliable_had") == Approx(64.955510).epsilon(1e-8));
    book.changes().undo();
    // A demand by month: twice as much in July of each year, by the calendar of the first day.
    book.changes().type_rows("demand_list", TextRows{{"="}, {"="}, {"="}, {"="}, {"="}, {"="}, {"4 m3"}});
    CHECK(total("demand") == Approx(2922 + 4 * 31 * 2).epsilon(1e-12));
    book.changes().undo();
    // More than there is: no store reaches it, and the reason stands beside the row.
    book.changes().type("reliable_least", "99.9 %");
    CHECK(book.document().named("store_wanted")->getError() == not_available);
    CHECK(book.verdict("reliable_enough") == "FAIL");
    book.changes().undo();
    CHECK(book.document().named("store_wanted")->getError() == 0);
    // What is no rain is refused with its place, and nothing is computed with it.
    for (const char* day : {"-5", "trace", "6000"}) {
        CAPTURE(day);
        book.changes().type_rows("day_rain", {{"="}, {"="}, {day}});
        CHECK(book.document().named("yield_year")->getError() != 0);
        CHECK(book.document().named("store_wanted")->getError() != 0);
        book.changes().undo();
    }
    CHECK(book.document().named("yield_year")->getError() == 0);
}

TEST_CASE("a hundred years of daily rain are balanced between two key strokes") {
    const TextRows years = seattle_rain();
    TextRows century;
    for (int i = 0; i < 25; ++i) century.insert(century.end(), years.begin(), years.end());
    ReuseBook book;
    book.fill(century, "1912-01-01", "2011-12-31");
    CHECK(book.value("day_count") == 36525);
    CHECK(book.verdict("days_whole") == "PASS");
    CHECK(book.value("balance_error") < 1e-9);
    constexpr int rounds = 20;
    const double before = processor_time_of(the_office());
    for (int i = 0; i < rounds; ++i) book.document().recalculate();
    const double each = (processor_time_of(the_office()) - before) / rounds;
    INFO("recalculation: " << each * 1e3 << " ms");
    CHECK(each < 0.1);
}

}  // namespace undercroft::tests
