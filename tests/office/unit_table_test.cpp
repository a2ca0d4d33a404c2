// Units by their tested table, through the sheets: our own section written as a table gives the section's
// numbers, and a coarse table those of a hand calculation, in everything that computes storage or a depth of
// water.
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XCellAddressable.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <map>

#include "tests/office/desk.hpp"

namespace undercroft::tests {

namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using std::numbers::pi;

/// Everything in the whole job that rests on what a unit holds.
const char* const held[] = {"storage_full",      "storage_provided", "storage_depth",  "storage_kept",
                            "storage_required",  "chamber_volume",   "peak_depth",     "peak_stored",
                            "empty_time",        "blocked_depth",    "part_depth",     "second_start",
                            "second_depth",      "soak_porosity",    "zone_embedment", "uplift_weight",
                            "storm_taken_design"};

sheets::Document template_of(const std::string& name) {
    sheets::Document document = the_office().open(std::filesystem::path(TEMPLATES_FOLDER) / (name + ".ots"));
    document.recalculate();
    return document;
}

double number_of(const sheets::Document& document, const std::string& key, int below = 0) {
    const auto cell = document.named(key, 0, below);
    INFO(key);
    REQUIRE(cell->getError() == 0);
    return cell->getValue();
}

struct TestedRow {
    double depth_mm, middle, end, wide;
};

/// Typed in one go; computed when `recalculate` says so.
void calculate_at_once(const sheets::Document& document, bool at_once) {
    Reference<css::sheet::XCalculatable>(document.model(), UNO_QUERY_THROW)
        ->enableAutomaticCalculation(at_once);
}

void type_row(const sheets::Document& document, int row, const TestedRow& values) {
    document.named("unit_table_height", 0, row)->setValue(values.depth_mm);
    document.named("unit_table_middle", 0, row)->setValue(values.middle);
    document.named("unit_table_end", 0, row)->setValue(values.end);
    document.named("unit_table_wide", 0, row)->setValue(values.wide);
}

void count_by_table(const sheets::Document& document, const std::vector<TestedRow>& rows) {
    calculate_at_once(document, false);
    for (std::size_t i = 0; i < rows.size(); ++i) type_row(document, static_cast<int>(i), rows[i]);
    document.named("unit_volume_by")->setFormula("by its tested table");
    calculate_at_once(document, true);
    document.recalculate();
}

/// Puts so many rows into the midst of the tested table, as a user's own would be.
void lengthen_table(const sheets::Document& document, int more) {
    calculate_at_once(document, false);
    const Reference<css::sheet::XSpreadsheet> site = document.sheet("Storage");
    Reference<css::util::XProtectable>(site, UNO_QUERY_THROW)->unprotect({});
    const auto first =
        Reference<css::sheet::XCellAddressable>(document.named("unit_table_height"), UNO_QUERY_THROW);
    Reference<css::table::XColumnRowRange>(site, UNO_QUERY_THROW)
        ->getRows()
        ->insertByIndex(first->getCellAddress().Row + 2, more);
    for (int row = 2; row < 2 + more; ++row) {
        document.named("unit_table_height", 1, row)->setFormula("mm");
        for (const char* kind : {"middle", "end", "wide"})
            document.named(std::string("unit_table_") + kind, 1, row)->setFormula("m3");
    }
}

}  // namespace

TEST_CASE("our own ellipse as a tested table of many rows gives the ellipse's numbers", "[units]") {
    const sheets::Document job = template_of("whole-job");
    job.named("tailwater_depth")->setValue(0.4);  // so that water is kept
    job.named("bed_lined")->setFormula("yes");
    job.recalculate();
    std::map<std::string, double> by_section;
    for (const char* key : held) by_section[key] = number_of(job, key);
    CHECK(by_section["storage_kept"] > 0);

    constexpr int rows = 2001;
    const double span = number_of(job, "chamber_span") / 1000;
    const double rise = number_of(job, "chamber_rise") / 1000;
    const double each = number_of(job, "chamber_length") / number_of(job, "bed_units");
    lengthen_table(job, rows - job.rows_of("unit_table_height"));
    std::vector<TestedRow> table;
    for (int i = 0; i < rows; ++i) {
        const double share = i / (rows - 1.0);
        const double area = span / 2 * rise * (std::asin(share) + share * std::sqrt(1 - share * share));
        table.push_back({1000 * rise * share, area * each, area * each, area * each});
    }
    job.named("wide_units")->setValue(6);
    count_by_table(job, table);
    for (const char* key : held) {
        INFO(key);
        CHECK(number_of(job, key) == Approx(by_section[key]).epsilon(1e-6));
    }
    CHECK(sheets::shown(job.named("unit_table_high")) == "PASS");
    CHECK(sheets::shown(job.named("unit_table_agrees")) == "PASS");
    CHECK(number_of(job, "unit_table_off") < 1e-4);

    // On a formation that falls, too.
    job.named("bed_fall_given")->setValue(0.5);
    job.recalculate();
    std::map<std::string, double> falling;
    for (const char* key : held) falling[key] = number_of(job, key);
    CHECK(falling["storage_full"] < 0.95 * by_section["storage_full"]);
    job.named("unit_volume_by")->setFormula("by its section");
    job.recalculate();
    for (const char* key : held) {
        INFO(key);
        CHECK(number_of(job, key) == Approx(falling[key]).epsilon(1e-6));
    }
}

TEST_CASE("a coarse tested table by hand, row by row, in all that holds water", "[units]") {
    const sheets::Document job = template_of("whole-job");
    job.named("pit_batter")->setFormula("0H:1V");
    job.named("tailwater_depth")->setValue(0.5);
    job.named("wide_units")->setValue(5);
    job.recalculate();
    std::map<std::string, double> by_section;
    for (const char* key : held) by_section[key] = number_of(job, key);
    const std::vector<TestedRow> table = {
        {0, 0, 0, 0}, {300, 0.50, 0.42, 0.51}, {560, 0.86, 0.74, 0.88}, {710, 0.96, 0.83, 0.99}};
    count_by_table(job, table);

    const double rows = number_of(job, "bed_rows");
    const double units = number_of(job, "bed_units");
    const auto in_all = [&](double depth) {
        const double d = 1000 * std::clamp(depth - 0.34, 0.0, 0.71);
        std::size_t next = 1;
        while (table[next].depth_mm < d) ++next;
        const TestedRow& low = table[next - 1];
        const TestedRow& high = table[next];
        const double t = (d - low.depth_mm) / (high.depth_mm - low.depth_mm);
        const auto between = [&](double from, double to) { return from + t * (to - from); };
        return (units - 2 * rows - 5) * between(low.middle, high.middle) +
               2 * rows * between(low.end, high.end) + 5 * between(low.wide, high.wide);
    };
    const double plan = number_of(job, "bed_length") * number_of(job, "bed_width");
    const auto water = [&](double depth) { return 0.4 * plan * depth + 0.6 * in_all(depth); };
    const double height = 0.34 + 0.71 + 0.152;
    CHECK(number_of(job, "unit_all") == Approx(in_all(height)).epsilon(1e-12));
    CHECK(number_of(job, "chamber_volume") == Approx(in_all(height)).epsilon(1e-12));
    CHECK(number_of(job, "storage_full") == Approx(water(height)).epsilon(1e-12));
    CHECK(number_of(job, "storage_kept") == Approx(water(0.5)).epsilon(1e-12));
    CHECK(number_of(job, "storage_provided") ==
          Approx(water(number_of(job, "storage_level")) - number_of(job, "plastic_taken")).epsilon(1e-12));
    CHECK(water(number_of(job, "storage_depth")) == Approx(number_of(job, "storage_required")).epsilon(1e-9));
    CHECK(water(number_of(job, "second_start")) == Approx(number_of(job, "second_volume")).epsilon(1e-9));
    CHECK(water(number_of(job, "storm_half_depth")) ==
          Approx(number_of(job, "storm_half_half")).epsilon(1e-9));
    for (int row = 1; row < 22; ++row)
        CHECK(number_of(job, "stage_table_total", row) ==
              Approx(water(number_of(job, "stage_table_depth", row))).epsilon(1e-9));
    // Nothing that rests on it has kept the section: it stands by a share that no rounding makes.
    for (const char* key : held) {
        INFO(key);
        CHECK(std::abs(number_of(job, key) / by_section[key] - 1) > 1e-4);
    }
}

TEST_CASE("a tested table that is blank or no table is refused with a sentence", "[units]") {
    const sheets::Document job = template_of("storage");
    const double before = number_of(job, "storage_full");
    const auto why = [&] {
        const auto cell = job.named("storage_full");
        CHECK(cell->getError() != 0);
        job.cell("Storage", "Z300")->setFormula("=UC.WHY(storage_full)");
        return sheets::shown(job.cell("Storage", "Z300"));
    };
    const Reference<css::util::XProtectable> sheet(job.sheet("Storage"), UNO_QUERY_THROW);
    sheet->unprotect({});
    job.named("unit_volume_by")->setFormula("by its tested table");
    job.recalculate();
    CHECK_THAT(why(), Catch::Contains("the table is blank"));
    count_by_table(job, {{0, 0, 0, 0}, {300, 0.5, 0.42, 0}, {200, 0.86, 0.74, 0}, {710, 0.96, 0.83, 0}});
    CHECK_THAT(why(), Catch::Contains("depths that do not rise: 0.2 m after 0.3 m"));
    count_by_table(job, {{0, 0, 0, 0}, {300, 0.5, 0.42, 0}, {560, 0.86, 0.41, 0}, {710, 0.96, 0.83, 0}});
    CHECK_THAT(why(), Catch::Contains("kind 2 has volumes that fall: 0.41 m3 after 0.42 m3"));
    job.named("unit_volume_by")->setFormula("by the table");
    job.recalculate();
    CHECK(job.named("storage_full")->getError() != 0);
    job.named("unit_volume_by")->setFormula("by its section");
    job.recalculate();
    CHECK(number_of(job, "storage_full") == before);
}

}  // namespace undercroft::tests
