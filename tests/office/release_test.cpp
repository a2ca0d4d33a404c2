// The workbook of release with the worked examples of TR-55.
#include <filesystem>

#include "sheets/builder/files.hpp"
#include "sheets/office/job_filler.hpp"
#include "tests/office/desk.hpp"

namespace undercroft::tests {

namespace {

namespace fs = std::filesystem;
using TypedRows = std::vector<std::vector<std::string>>;

/// A rain table over that of the template, whose further rows are cleared.
TypedRows alone(TypedRows rows) {
    constexpr std::size_t of_the_template = 11;
    while (rows.size() < of_the_template) rows.push_back({"-", "-", "-"});
    return rows;
}

/// A table of one column of 24-hour rain, and of the 2-year rain beside it; what falls sooner is no matter.
TypedRows rain_of(const std::string& depth_2, const std::string& frequency, const std::string& depth) {
    return alone({{"-", "2 years", frequency},
                  {"5 min", "0.3", "0.5"},
                  {"60 min", "1.5", "2.4"},
                  {"24 h", depth_2, depth}});
}

/// The workbook in US customary units, and what is typed into it.
class ReleaseBook {
public:
    explicit ReleaseBook(const char* name)
        : sheets_(sheets::read_sheets(fs::path(PROJECT_FOLDER) / "sheets" / "text")),
          document_(the_office().open(fs::path(TEMPLATES_FOLDER) / name)),
          filler_(document_, sheets_) {}
    sheets::JobFiller& filler() { return filler_; }
    /// Types one catchment with one storm, all of whose way is a channel of a time that is given.
    void only(const std::string& area, const std::string& cn, double hours, const TypedRows& rain) {
        filler_.type("rain_values", "in");
        filler_.type_rows("agency_rain", rain);
        filler_.type_rows("cover_list", {{area, cn, "0.3"}, {"-", "-", "-"}});
        filler_.type_rows("sheet_list", {{"-", "-", "-"}});
        filler_.type_rows("shallow_list", {{"-", "-", "-"}});
        filler_.type_rows("channel_list", {{"0.05", "27 ft2", "28.2 ft", "1000 ft", "0.5 %"}});
        filler_.type_rows("release_rain", {{rain[0][2], "100 %"}, {"-", "-"}});
        document_.recalculate();
        const double minutes = value("travel_time");
        filler_.type_rows("channel_list",
                          {{"=", "=", "=", std::to_string(1000 * hours * 60 / minutes) + " ft", "="}});
        document_.recalculate();
    }
    [[nodiscard]] const sheets::Document& document() const { return document_; }
    [[nodiscard]] double value(const std::string& key, int row = 0) const {
        return document_.named(key, 0, row)->getValue();
    }

private:
    std::vector<sheets::Sheet> sheets_;
    sheets::Document document_;
    sheets::JobFiller filler_;
};

}  // namespace

// USDA TR-55 (1986), Examples 2-2, 3-1 and 4-1, which are one: 250 acres, 25-year rain of 6.0 in, type II.
// 4-1 was read as quoted in a public note, what of 2-2 and 3-1 leads there is from memory: CN 75, t_c 1.53 h,
// Q 3.28 in, q_u 270, 345 ft3/s.
TEST_CASE("TR-55's worked watershed through the workbook of release, from its land uses to its peak") {
    ReleaseBook book("release-us.ots");
    sheets::JobFiller& typed = book.filler();
    typed.type("rain_values", "in");
    typed.type_rows("agency_rain", rain_of("3.6", "25 years", "6.0"));
    typed.type_rows("cover_list",
                    {{"75 acre", "70", "0.3"}, {"100 acre", "80", "0.3"}, {"75 acre", "74", "0.2"}});
    typed.type("number_whole", "yes");
    typed.type_rows("sheet_list", {{"0.24", "100 ft", "1 %"}});
    typed.type_rows("shallow_list", {{"unpaved", "1400 ft", "1 %"}});
    typed.type_rows("channel_list", {{"0.05", "27 ft2", "28.2 ft", "7300 ft", "0.5 %"}});
    typed.type_rows("release_rain", {{"25 years", "100 %"}, {"-", "-"}});
    typed.type("release_by", "NRCS");
    book.document().recalculate();

    CHECK(book.value("site_area") == Approx(250).epsilon(1e-12));
    CHECK(book.value("site_number") == Approx(75.2).epsilon(1e-12));
    CHECK(book.value("site_cn") == 75);
    CHECK(book.value("sheet_list_time") / 60 == Approx(0.30).margin(0.005));
    CHECK(book.value("shallow_list_time") / 60 == Approx(0.24).margin(0.005));
    CHECK(book.value("channel_list_time") / 60 == Approx(0.99).margin(0.005));
    CHECK(book.value("site_time") / 60 == Approx(1.53).margin(0.005));
    CHECK(book.value("release_rain_depth") == Approx(6.0).epsilon(1e-12));
    CHECK(book.value("release_rain_runoff") == Approx(3.28).margin(0.005));
    CHECK(book.value("loss_first") == Approx(0.667).margin(0.0005));
    CHECK(book.value("release_list_held") == Approx(11).margin(0.5));
    CHECK(book.value("release_peak") == Approx(270).margin(1.5));  // read off a chart; 269.1 by its equation
    CHECK(book.value("release_list_nrcs") == Approx(345).margin(1));
    CHECK(book.value("release_design") == book.value("release_list_permitted"));
    CHECK(book.value("release_design") == Approx(book.value("release_list_nrcs")).epsilon(1e-12));

    // A share of it, and the lower of both methods.
    typed.type_rows("release_rain", {{"=", "80 %"}});
    CHECK(book.value("release_design") == Approx(0.8 * book.value("release_list_nrcs")).epsilon(1e-12));
    typed.type("release_by", "lower");
    CHECK(book.value("release_design") ==
          Approx(0.8 * std::min(book.value("release_list_nrcs"), book.value("release_list_rational"))));
    typed.type("release_by", "rational");
    CHECK(book.value("release_design") == Approx(0.8 * book.value("release_list_rational")));
    // What its column says not, is refused in its row and in what rests on it.
    typed.type_rows("release_rain", {{"100 years", "="}});
    CHECK(book.document().named("release_rain_depth")->getError() != 0);
    CHECK(book.document().named("release_design")->getError() != 0);
}

// Peaks computed apart from TR-55's coefficients.
TEST_CASE("two further peaks by the graphical method through the workbook of release") {
    ReleaseBook book("release-us.ots");
    book.only("32 acre", "80", 0.3, rain_of("3", "10 years", "5"));  // 0.05 mi2
    CHECK(book.value("site_time") == Approx(18).epsilon(1e-6));
    CHECK(book.value("release_list_nrcs") == Approx(97.794404).epsilon(1e-6));
    CHECK(book.value("release_peak") == Approx(676.109462).epsilon(1e-6));
    book.only("256 acre", "68", 1.2, rain_of("3", "10 years", "3.6"));  // 0.4 mi2
    book.filler().type("pond_share", "5 %");
    CHECK(book.value("release_list_held") == Approx(26.1437908).epsilon(1e-7));
    CHECK(book.value("release_rain_runoff") == Approx(0.959894757).epsilon(1e-7));
    CHECK(book.value("release_list_nrcs") == Approx(75.052968).epsilon(1e-6));
}

// Arithmetic: C i A at the time of concentration, between two rows of the table on a log-log line.
TEST_CASE("six storms by the rational method, SI, and the first flush and the silt beside them") {
    ReleaseBook book("release.ots");
    sheets::JobFiller& typed = book.filler();
    TypedRows rain = {{"-", "1 year", "2 years", "5 years", "10 years", "50 years", "100 years"}};
    for (const auto& [minutes, base] :
         {std::pair{"5 min", 100.0}, {"20 min", 50.0}, {"80 min", 25.0}, {"1440 min", 4.0}}) {
        rain.push_back({minutes});
        for (const double times : {1.0, 1.2, 1.5, 1.8, 2.2, 2.5})
            rain.back().push_back(std::to_string(base * times));
    }
    typed.type_rows("agency_rain", alone(rain));
    typed.type_rows("cover_list", {{"1 ha", "70", "0.3"}, {"1 ha", "60", "0.2"}});
    typed.type_rows("sheet_list", {{"-", "-", "-"}});
    typed.type_rows("shallow_list", {{"grassed waterway", "849.6 m", "0.6 %"}});  // 4.57 sqrt(0.006) m/s
    typed.type_rows("release_rain", {{"1 year", "100 %"},
                                     {"2 years", "90 %"},
                                     {"5 years", "100 %"},
                                     {"10 years", "100 %"},
                                     {"50 years", "100 %"},
                                     {"100 years", "50 %"}});
    typed.type("release_by", "rational");
    typed.type("catchment_area", "1 ha");
    typed.type("quality_sealed", "10 %");
    book.document().recalculate();
    const double t = 849.6 / (4.57 * std::sqrt(0.006)) / 60;
    CHECK(book.value("site_time") == Approx(t).epsilon(1e-4));
    CHECK(book.value("site_c") == Approx(0.25).epsilon(1e-12));
    CHECK(book.value("site_cn") == Approx(65).epsilon(1e-12));
    const double times[] = {1.0, 1.2, 1.5, 1.8, 2.2, 2.5};
    const double shares[] = {1, 0.9, 1, 1, 1, 0.5};
    const double site_minutes = book.value("site_time");
    for (int storm = 0; storm < 6; ++storm) {
        CAPTURE(storm);
        const double intensity = 50 * times[storm] * std::sqrt(20 / site_minutes);
        CHECK(book.value("release_rain_intensity", storm) == Approx(intensity).epsilon(1e-6));
        const double flow = 0.25 * intensity * 2 / 0.36;  // L/s, by mm/h and ha
        CHECK(book.value("release_list_rational", storm) == Approx(flow).epsilon(1e-6));
        CHECK(book.value("release_list_permitted", storm) == Approx(flow * shares[storm]).epsilon(1e-6));
    }
    CHECK(book.value("quality_volume") == Approx(35).epsilon(1e-12));  // 25 mm x (0.05 + 0.09) x 1 ha
    typed.type("catchment_area", "2 ha");
    typed.type("silt_load", "60 g/m2");
    typed.type("silt_floor", "60 m2");
    CHECK(book.value("silt_years") == Approx(5.625).epsilon(1e-12));
    CHECK(book.value("silt_grown") == Approx(200.0 / 3).epsilon(1e-12));
    // A land use by half is refused, not taken as 0.
    typed.type_rows("cover_list", {{"=", "-", "="}});
    CHECK(book.document().named("release_design")->getError() != 0);
    CHECK(book.document().named("site_cn")->getError() != 0);
}

}  // namespace undercroft::tests
