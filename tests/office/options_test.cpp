// Beds of the workbook of options, entered in the whole job one after the other: its rows give the same
// numbers.
#include <com/sun/star/sheet/XCellAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XSheetAnnotationAnchor.hpp>
#include <com/sun/star/sheet/XSheetAnnotationsSupplier.hpp>
#include <com/sun/star/text/XSimpleText.hpp>
#include <com/sun/star/util/XSearchable.hpp>

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>

#include "sheets/builder/cell_text.hpp"
#include "sheets/builder/files.hpp"
#include "sheets/office/job_filler.hpp"
#include "tests/office/asked_audit.hpp"
#include "tests/office/desk.hpp"
#include "tests/office/menu_hand.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

namespace {

namespace fs = std::filesystem;
using Typed = std::vector<std::vector<std::string>>;

/// Of the two kinds that are tried, as both workbooks take them.
struct Kind {
    const char* shape;
    double span, rise, foot, one_foot, end, middle, mass, least, greatest, crown, lasting;
};
const Kind kinds[] = {{"ellipse", 1040, 710, 1130, 150, 1.915, 1.86, 28, 0.75, 2.5, 130, 60},
                      {"parabola", 820, 560, 900, 130, 2.25, 2.1, 20, 0.8, 2.4, 125, 55}};

std::string text(double number) {
    return exact_text(number);
}

class Book {
public:
    explicit Book(const fs::path& file, bool as_template)
        : sheets_(sheets::read_sheets(fs::path(PROJECT_FOLDER) / "sheets" / "text")),
          document_(as_template ? the_office().open(file) : the_office().open_copy(file)),
          filler_(document_, sheets_) {}

    [[nodiscard]] double value(const std::string& key, int row = 0) const {
        INFO(key);
        REQUIRE(document_.named(key, 0, row)->getError() == 0);
        return document_.named(key, 0, row)->getValue();
    }
    void set(const std::string& key, double number, int row = 0) const {
        document_.named(key, 0, row)->setValue(number);
    }
    /// Why there is no table of beds.
    [[nodiscard]] std::string reason() const {
        document_.named("try_passing")->setFormula("=UC.WHY(try_bed_kind)");
        return sheets::shown(document_.named("try_passing"));
    }
    [[nodiscard]] std::string shown(const std::string& key, int row = 0) const {
        return sheets::shown(document_.named(key, 0, row));
    }
    [[nodiscard]] const sheets::Document& document() const { return document_; }
    sheets::JobFiller& filler() { return filler_; }
    void recalculate() { document_.recalculate(); }

private:
    std::vector<sheets::Sheet> sheets_;
    sheets::Document document_;
    sheets::JobFiller filler_;
};

/// The workbook of options on the site of the filled job, with the rates of its order list.
void type_site(Book& options, const Book& job) {
    sheets::JobFiller& filler = options.filler();
    Typed sizes;
    Typed supplies;
    Typed shapes;
    for (const Kind& k : kinds) {
        shapes.push_back({k.shape});
        sizes.push_back(
            {text(k.span), text(k.rise), text(k.foot), text(k.one_foot), text(k.end), text(k.middle), "80"});
        supplies.push_back({"170", text(k.mass), text(k.least), text(k.greatest), text(k.crown),
                            text(k.lasting), text(job.value("order_list_rate", 0)),
                            text(job.value("order_list_rate", 1))});
    }
    filler.type_rows("try_shape_shape", shapes);
    filler.type_rows("try_kind", sizes);
    filler.type_rows("try_supply", supplies);
    filler.type_rows("try_space", {{"41.7", "13.4", "48", "20", "600", "320", "320", "250"}});
    filler.type_rows("try_levels", {{"101.35", "101.40", "101.35", "101.45", "98.10", "500"}});
    filler.type_rows("try_stone", {{"250 mm", "500 mm", "50 mm"}, {"160 mm", "310 mm", "50 mm"}});
    filler.type_rows("try_count", {{"2", "12", "1"}, {"4", "24", "1"}});
    filler.type_rows("try_layer", {{"initial", "300 mm", "19 kN/m3"},
                                   {"general", "740 mm", "19 kN/m3"},
                                   {"pavement", "260 mm", "22 kN/m3"}});
    filler.type_rows("try_ground", {{text(job.value("soil_cohesion")), text(job.value("soil_friction")),
                                     text(job.value("soil_weight")), text(job.value("bearing_safety")),
                                     text(job.value("bearing_presumed")), "1.15", "1.2"}});
    filler.type_rows("try_material", {{"38", "1610", text(job.value("stone_moisture")), "100", "4.5", "450",
                                       text(job.value("plastic_density"))}});
    filler.type_rows("try_earth", {{"55", text(job.value("truck_volume")), text(job.value("spoil_density")),
                                    text(job.value("truck_payload")), text(job.value("degree_wanted")),
                                    text(job.value("reference_density")), text(job.value("fill_moisture"))}});
    filler.type_rows("try_choice", {{"AASHTO HL-93", "flexible", "loam", "1", "8"}});
    const auto rate = [&](const char* item, int row, const char* waste, const char* pack,
                          const char* unit) -> std::vector<std::string> {
        return {item, waste, pack, text(job.value("order_list_rate", row)) + " " + unit};
    };
    Typed rates = {
        rate("bedding", 2, "5 %", "20 t", "AUD/t"),    rate("embedment", 3, "5 %", "20 t", "AUD/t"),
        rate("initial", 4, "10 %", "1 t", "AUD/t"),    rate("general", 5, "10 %", "1 t", "AUD/t"),
        rate("rolls", 6, "0 %", "1 each", "AUD/each"), rate("ports", 9, "0 %", "1 each", "AUD/each"),
        rate("loads", 11, "0 %", "1 each", "AUD/each")};
    while (rates.size() < 17) rates.push_back({"pit", "0 %", "0 each", "0 AUD/m3"});
    filler.type_rows("try_rate", rates);
}

/// Enters a bed of the options in the whole job.
void enter(Book& job, const Kind& kind, const std::map<std::string, double>& bed) {
    job.filler().type("chamber_shape", kind.shape);
    job.set("chamber_span", kind.span);
    job.set("chamber_rise", kind.rise);
    job.set("chamber_foot", kind.foot);
    job.set("foot_width", kind.one_foot);
    job.set("end_unit", kind.end);
    job.set("middle_unit", kind.middle);
    job.set("unit_mass", kind.mass);
    job.set("least_cover", kind.least);
    job.set("greatest_cover", kind.greatest);
    job.set("crown_limit", kind.crown);
    job.set("long_limit", kind.lasting);
    job.set("site_length", bed.at("length"));
    job.set("site_width", bed.at("width"));
    job.set("site_layer_height", bed.at("base"), 0);
    job.set("site_layer_height", bed.at("cover"), 2);
    const double height = (bed.at("base") + kind.rise + bed.at("cover")) / 1000;
    job.set("overflow_list_level", height - 0.25 + job.value("least_freeboard") / 1000);
    job.recalculate();
}

void require_near(const char* what, double found, double wanted) {
    INFO(what);
    REQUIRE(found == Approx(wanted).epsilon(1e-9));
}

void require_same(const Book& job, const std::map<std::string, double>& bed) {
    require_near("rows", job.value("bed_rows"), bed.at("rows"));
    require_near("units in a row", job.value("row_units"), bed.at("units"));
    require_near("length", job.value("bed_length"), bed.at("length"));
    require_near("width", job.value("bed_width"), bed.at("width"));
    require_near("depth", job.value("bed_depth"), bed.at("depth"));
    require_near("storage", job.value("storage_provided"), bed.at("storage"));
    require_near("pit", job.value("pit_volume"), bed.at("pit"));
    require_near("stone", job.value("bedding_mass") + job.value("embedment_mass"), bed.at("stone"));
    double cost = 0;
    for (const int item : {0, 1, 2, 3, 4, 5, 6, 9, 11}) cost += job.value("order_list_cost", item);
    require_near("cost", cost, bed.at("cost"));
    require_near("cost per volume", cost / job.value("storage_provided"), bed.at("per"));
    const bool across = bed.at("across") == 1;
    const double ratios[] = {0,
                             300 / job.value("storage_provided"),
                             job.value("least_cover") / job.value("cover_least"),
                             job.value("cover_greatest") / job.value("greatest_cover"),
                             job.value("crown_demand") / job.value("crown_limit"),
                             job.value("long_demand") / job.value("long_limit"),
                             job.value("subgrade_pressure") / job.value("bearing_allowed"),
                             job.value("bed_depth") / (101.40 - 98.10 - 0.5),
                             job.value("pit_top_length") / (across ? 20 : 48),
                             job.value("pit_top_width") / (across ? 48 : 20)};
    require_near("ratio", *std::max_element(std::begin(ratios), std::end(ratios)), bed.at("ratio"));
    const auto fails_by = static_cast<std::size_t>(bed.at("check"));
    if (fails_by > 0) require_near("what it fails by", ratios[fails_by], bed.at("ratio"));
}

}  // namespace

TEST_CASE("a bed of the options has in the whole job the numbers that the options gave", "[people]") {
    Book job(filled_job, false);
    job.filler().type_rows("spot_levels", Typed(3, std::vector<std::string>(5, "101.35")));
    job.recalculate();
    Book options(fs::path(TEMPLATES_FOLDER) / "options.ots", true);
    type_site(options, job);
    options.filler().type("storage_required", "300 m3");
    options.recalculate();
    INFO(options.reason());
    std::size_t held = 0;
    std::size_t failed = 0;
    std::size_t second_kind = 0;
    for (int place = 1; place <= 30; place += place < 9 || place > 20 ? 1 : 2) {
        std::map<std::string, double> bed;
        for (const char* column : {"kind", "across", "rows", "units", "base", "cover", "length", "width",
                                   "depth", "storage", "pit", "stone", "cost", "per", "check", "ratio"})
            bed[column] = options.value(std::string("try_bed_") + column, place);
        INFO("place " << place << ", kind " << bed["kind"] << ", " << bed["rows"] << " x " << bed["units"]
                      << ", base " << bed["base"] << ", cover " << bed["cover"]);
        enter(job, kinds[static_cast<std::size_t>(bed["kind"]) - 1], bed);
        require_same(job, bed);
        ++held;
        failed += bed["check"] > 0 ? 1 : 0;
        second_kind += bed["kind"] == 2 ? 1 : 0;
    }
    CHECK(held >= 20);
    CHECK(failed >= 5);
    CHECK(second_kind >= 1);
}

namespace {

/// Rows of a sheet with a cell that holds this text.
int rows_that_say(const sheets::Document& document, const std::string& name, const std::string& text) {
    const auto search =
        css::uno::Reference<css::util::XSearchable>(document.sheet(name), css::uno::UNO_QUERY_THROW);
    const auto what = search->createSearchDescriptor();
    what->setSearchString(sheets::to_ustring(text));
    std::set<sal_Int32> rows;
    const auto found = search->findAll(what);
    for (sal_Int32 i = 0; found.is() && i < found->getCount(); ++i) {
        const auto area = css::uno::Reference<css::sheet::XCellRangeAddressable>(found->getByIndex(i),
                                                                                 css::uno::UNO_QUERY_THROW)
                              ->getRangeAddress();
        for (sal_Int32 row = area.StartRow; row <= area.EndRow; ++row) rows.insert(row);
    }
    return static_cast<int>(rows.size());
}

/// The filled job and the options for its site, both open, and a hand in the window of the options.
struct BothOpen {
    BothOpen() {
        job.filler().type_rows("spot_levels", Typed(3, std::vector<std::string>(5, "101.35")));
        job.recalculate();
        type_site(options, job);
        options.filler().type("storage_required", "300 m3");
        options.recalculate();
    }
    /// Puts the cursor on a row of a list or table, and picks the entry of the menu.
    [[nodiscard]] std::string enter_at(const std::string& name, int row) const {
        const css::table::CellAddress at =
            css::uno::Reference<css::sheet::XCellAddressable>(options.document().named(name, 0, row),
                                                              css::uno::UNO_QUERY_THROW)
                ->getCellAddress();
        hand.select("Options", sheets::cell_text(at.Row, at.Column));
        return hand.pick("enter-bed");
    }

    Book job{filled_job, false};
    Book options{fs::path(TEMPLATES_FOLDER) / "options.ots", true};
    MenuHand hand{the_office(), options.document()};
};

}  // namespace

TEST_CASE("a bed is entered by the menu as by hand, says from where it comes, and one undo takes it back",
          "[people]") {
    BothOpen open;
    const MenuHand in_job(the_office(), open.job.document());
    const double length = open.job.value("site_length");
    const double span = open.job.value("chamber_span");
    int other_kind = 1;
    while (open.options.value("try_bed_kind", other_kind) != 2) ++other_kind;
    for (const int place : {1, other_kind}) {
        CAPTURE(place);
        std::map<std::string, double> bed;
        for (const char* column : {"kind", "across", "rows", "units", "base", "cover", "length", "width",
                                   "depth", "storage", "pit", "stone", "cost", "per", "check", "ratio"})
            bed[column] = open.options.value(std::string("try_bed_") + column, place);
        const std::string said = open.enter_at("try_bed_kind", place);
        INFO(said);
        CHECK(said.find("22 inputs") != std::string::npos);
        CHECK(said.find("look at the gap") == std::string::npos);
        CHECK((said.find("across the space") != std::string::npos) == (bed["across"] == 1));
        CHECK((said.find("do not pass") != std::string::npos) == (bed["check"] > 0));
        open.job.recalculate();
        require_same(open.job, bed);
    }
    CHECK(in_job.undoes() == "Enter a bed");
    in_job.undo();
    in_job.undo();
    CHECK(open.job.value("site_length") == length);
    CHECK(open.job.value("chamber_span") == span);
    // Of those beside each other, by the place that is typed.
    open.options.set("try_pick_place", other_kind, 1);
    open.options.recalculate();
    CHECK(open.enter_at("try_pick_place", 1).find("are entered in") != std::string::npos);
    CHECK(open.job.value("chamber_span") == kinds[1].span);
    // The audit's register tells of each with its origin.
    (void)asked_audit(the_office(), open.job.document(), "", true);
    const auto register_rows = rows_that_say(open.job.document(), "Audit",
                                             "Bed " + std::to_string(other_kind) + " of the options of");
    CHECK(register_rows >= 11);  // two inputs stand beside each other
}

TEST_CASE("a person's comment at an input stays, and of those of two beds entered the last", "[people]") {
    BothOpen open;
    const auto cell = open.job.document().named("site_length");
    const auto at =
        css::uno::Reference<css::sheet::XCellAddressable>(cell, css::uno::UNO_QUERY_THROW)->getCellAddress();
    css::uno::Reference<css::sheet::XSheetAnnotationsSupplier>(open.job.document().sheet("Site"),
                                                               css::uno::UNO_QUERY_THROW)
        ->getAnnotations()
        ->insertNew(at, "Bed as surveyed");
    for (const int place : {1, 2})
        CHECK(open.enter_at("try_bed_kind", place).find("are entered in") != std::string::npos);
    const css::uno::Reference<css::text::XSimpleText> comment(
        css::uno::Reference<css::sheet::XSheetAnnotationAnchor>(cell, css::uno::UNO_QUERY_THROW)
            ->getAnnotation(),
        css::uno::UNO_QUERY_THROW);
    const std::string said = sheets::to_utf8(comment->getString());
    CHECK_THAT(said, Catch::StartsWith("Bed as surveyed\nBed 2 of the options of "));
    CHECK(said.find("Bed 1 of the options of ") == std::string::npos);
}

TEST_CASE("a bed that cannot be entered is refused in a sentence, and nothing is written", "[people]") {
    BothOpen open;
    const double length = open.job.value("site_length");
    const auto refused = [&](const std::string& name, int row, const std::string& because) {
        const std::string said = open.enter_at(name, row);
        CHECK_THAT(said, Catch::Contains(because));
        CHECK(open.job.value("site_length") == length);
    };
    refused("try_stone_from", 0, "Put the cursor on a bed first");
    refused("try_bed_kind", 0, "Put the cursor on a bed first");  // its heads
    open.options.set("try_pick_place", 31, 0);
    open.options.recalculate();
    refused("try_pick_place", 0, "There is no bed at place 31");
    // A row of the base stone more.
    const std::string part = open.job.shown("site_layer_part", 4);
    open.job.document().named("site_layer_part", 0, 4)->setFormula("base");
    refused("try_bed_kind", 1, "more than one row of base");
    open.job.document().named("site_layer_part", 0, 4)->setFormula(sheets::to_ustring(part));
    // Somebody computes an input.
    open.job.document().named("row_gap")->setFormula("=100+50");
    refused("try_bed_kind", 1, "holds a formula, and an input of the bed belongs there: nothing was entered");
    open.job.document().named("row_gap")->setValue(150);
    {
        const Book other(filled_job, false);
        refused("try_bed_kind", 1, "close the one that it is not for");
    }
    CHECK(open.enter_at("try_bed_kind", 1).find("are entered in") != std::string::npos);
    const MenuHand in_job(the_office(), open.job.document());
    CHECK_THAT(in_job.pick("enter-bed"), Catch::Contains("from the workbook of options"));
}

TEST_CASE("a bed without a whole job beside it is refused", "[people]") {
    const Book options(fs::path(TEMPLATES_FOLDER) / "options.ots", true);
    const MenuHand hand(the_office(), options.document());
    hand.select("Options", "B104");
    CHECK_THAT(hand.pick("enter-bed"), Catch::Contains("Open the whole job that the bed is for"));
}

}  // namespace undercroft::tests
