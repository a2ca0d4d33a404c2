// The numbers of a job as text, where they go, and what the checks of its workbooks come to.
#include "sheets/builder/job_text.hpp"
#include "sheets/builder/job_verdicts.hpp"
#include "sheets/builder/typed_range.hpp"
#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Words = std::vector<std::string>;

namespace {

JobText job_of(const std::string& text) {
    return read_job(text, [](const std::string& name) -> std::string {
        if (name == "base") return "a_b = 1 m\nt_t : 1 ; 2\nt_t : 3 ; 4\nshow a_b\nfails c_c\n";
        if (name == "circle") return "like circle\n";
        if (name == "unit") return "# a unit\nc_c = 710 mm\nu_u : 0 ; 0\nu_u : 1 ; 2\nconfirm c_d\n";
        if (name == "loop") return "take loop\n";
        if (name == "days") return "# a day a line\n0\n3.5\n12 ; 4\n";
        if (name == "far/job") return "like near\npaste u_u days\n";
        if (name == "far/near") return "a_b = 7 m\n";
        if (name == "far/days") return "8\n";
        throw std::runtime_error("there is no job " + name);
    });
}

}  // namespace

TEST_CASE("a job has values, rows, results to show and checks that it must fail") {
    const JobText job = job_of(
        "# remark\na_b = 12 ft 6 in\njob_name = A = B : C\nt_t : 5 ; 138\nt_t : 10 ; -\nshow a_b\nshow "
        "r_r\nfails c_c\n");
    CHECK(job.values.at("a_b") == "12 ft 6 in");
    CHECK(job.values.at("job_name") == "A = B : C");
    CHECK(job.values.size() == 2);
    CHECK(job.rows.at("t_t") == std::vector<Words>{{"5", "138"}, {"10", "-"}});
    CHECK(job.main_results == Words{"a_b", "r_r"});
    CHECK(job.failing == std::set<std::string>{"c_c"});
    CHECK(job_of("show_me = 1\nfailsafe = 2\nlikely = 3\n").values.size() == 3);
}

TEST_CASE("a job like another starts from its numbers, and its own come on top") {
    const JobText job = job_of("like base\na_b = 2 m\nt_t : 9 ; 9\nconfirm c_c d_d\nconfirm e_e\nshow r_r\n");
    CHECK(job.confirmed == std::set<std::string>{"c_c", "d_d", "e_e"});
    CHECK(job.values.at("a_b") == "2 m");
    CHECK(job.rows.at("t_t") == std::vector<Words>{{"9", "9"}});
    CHECK(job.main_results == Words{"a_b", "r_r"});
    CHECK(job.failing.contains("c_c"));
    CHECK(job_of("like base\n").rows.at("t_t").size() == 2);
}

TEST_CASE("a data sheet that a job takes stands as if it were typed there") {
    const JobText job = job_of("like base\ntake unit\na_b = 2 m\n");
    CHECK(job.values.at("c_c") == "710 mm");
    CHECK(job.values.at("a_b") == "2 m");
    CHECK(job.rows.at("u_u") == std::vector<Words>{{"0", "0"}, {"1", "2"}});
    CHECK(job.rows.at("t_t").size() == 2);
    CHECK(job.confirmed == std::set<std::string>{"c_d"});
    CHECK_THROWS_WITH(job_of("take unit\nc_c = 700 mm\n"), "line 2: the key c_c stands twice");
    CHECK_THROWS_WITH(job_of("u_u : 3 ; 4\ntake unit\n"), "line 2: the key u_u stands twice");
    CHECK_THROWS_WITH(job_of("take loop\n"), "line 1: texts take each other in a circle");
    CHECK_THROWS_WITH(job_of("take nothing\n"), "there is no job nothing");
    CHECK_THROWS_WITH(job_of("take unit\nlike base\n"), "line 2: 'like' must stand before the numbers");
}

TEST_CASE("rows are pasted from a text beside the job") {
    const JobText job = job_of("like base\npaste t_t days\npaste u_u days\n");
    CHECK(job.rows.at("t_t") == std::vector<Words>{{"0"}, {"3.5"}, {"12", "4"}});
    CHECK(job.rows.at("u_u").size() == 3);
    CHECK_THROWS_WITH(job_of("a_b = 1\npaste t_t\n"), "line 2: wanted: paste KEY TEXT");
    CHECK_THROWS_WITH(job_of("t_t : 1 ; 2\npaste t_t days\n"), "line 2: the key t_t stands twice");
    CHECK_THROWS_WITH(job_of("paste t_t nothing\n"), "there is no job nothing");
}

TEST_CASE("what a job names lies beside it, wherever it is called from") {
    const JobText job = job_of("like far/job\npaste t_t days\n");
    CHECK(job.values.at("a_b") == "7 m");
    CHECK(job.rows.at("u_u") == std::vector<Words>{{"8"}});
    CHECK(job.rows.at("t_t").size() == 3);
}

TEST_CASE("mistakes in a job are told with their line") {
    CHECK_THROWS_WITH(job_of("a_b = 1\n\nb_c\n"),
                      "line 3: wanted: KEY = VALUE, KEY : A ; B, paste KEY TEXT, confirm KEY, show KEY, "
                      "fails KEY, take TEXT or like "
                      "JOB");
    CHECK_THROWS_WITH(job_of("a_b = 1\na_b = 2\n"), "line 2: the key a_b stands twice");
    CHECK_THROWS_WITH(job_of("a_b = 1\nlike base\n"), "line 2: 'like' must stand before the numbers");
    CHECK_THROWS_WITH(job_of("like circle\n"), "line 1: jobs are like each other in a circle");
    CHECK_THROWS_WITH(job_of("like nothing\n"), "there is no job nothing");
    CHECK_THROWS_WITH(job_of("show\n"), Catch::StartsWith("line 1: wanted"));
}

TEST_CASE("a check that fails in one workbook is not forgotten when it passes in the next") {
    JobVerdicts verdicts;
    verdicts.add("storage", "cover_deep", "FAIL");
    verdicts.add("whole-job", "cover_deep", "PASS");
    verdicts.add("whole-job", "gap_wide", "PASS");
    verdicts.add("whole-job", "holds_done", "open");
    CHECK(verdicts.complaints({}) == Words{"the check cover_deep fails in storage"});
    CHECK(verdicts.complaints({"cover_deep"}) ==
          Words{"the check cover_deep must fail in this job, and does not in whole-job"});
    CHECK(verdicts.complaints({"cover_deep", "holds_done"}).size() == 2);
    CHECK(verdicts.complaints({"no_check"}) ==
          Words{"the check cover_deep fails in storage",
                "the check no_check must fail in this job, and is in none of these workbooks"});
}

TEST_CASE("a job whose checks are as it says has no complaint") {
    JobVerdicts verdicts;
    CHECK(verdicts.complaints({}).empty());
    verdicts.add("storage", "cover_deep", "FAIL");
    verdicts.add("whole-job", "cover_deep", "FAIL");
    verdicts.add("whole-job", "gap_wide", "not counted");
    CHECK(verdicts.complaints({"cover_deep"}).empty());
    CHECK(verdicts.complaints({}).size() == 2);
}

TEST_CASE("the fields of a job's row go into the typed columns of a grid, a list or a column of one") {
    const Row grid = row_of("grid rain_table | G | t, unit min, as t; i, unit mm/h");
    const auto in_grid = typed_range(grid, "rain_table");
    REQUIRE(in_grid.has_value());
    CHECK(in_grid->first_row == 1);
    REQUIRE(in_grid->fields.size() == 2);
    CHECK(in_grid->fields[0].column == 0);
    CHECK(in_grid->fields[1].column == 1);
    CHECK_FALSE(in_grid->fields[1].is_pair);
    CHECK(typed_range(grid, "rain_table_t")->first_row == 1);
    CHECK(typed_range(grid, "rain_table_t")->fields.size() == 1);

    const Row list = row_of(
        "list order_list | L | Item, span 3; Net, span 2, unit m3, as net; Sum, span 2, unit m3, as sum := "
        "UC.X(@net; @); N, "
        "format number; By, format entry, as by");
    const auto in_list = typed_range(list, "order_list");
    REQUIRE(in_list.has_value());
    CHECK(in_list->first_row == 0);
    REQUIRE(in_list->fields.size() == 3);  // not the wording, nor what is computed
    CHECK(in_list->fields[0].column == 0);
    CHECK(in_list->fields[0].is_pair);
    CHECK(in_list->fields[1].column == 4);
    CHECK_FALSE(in_list->fields[1].is_pair);
    CHECK(in_list->fields[2].column == 5);
    const auto net = typed_range(list, "order_list_net");
    REQUIRE(net.has_value());
    CHECK(net->first_row == 0);
    REQUIRE(net->fields.size() == 1);
    CHECK(net->fields[0].column == 0);
    CHECK(net->fields[0].is_pair);
    CHECK_FALSE(typed_range(list, "order_list_by")->fields[0].is_pair);
    CHECK(typed_range(list, "order_list_sum")->fields.empty());
    CHECK_FALSE(typed_range(list, "order_list_item").has_value());
    CHECK_FALSE(typed_range(list, "order_list_").has_value());
    CHECK_FALSE(typed_range(row_of("table t_t | T | 2 | x, as x | UC.T(@)"), "t_t").has_value());
    CHECK_FALSE(typed_range(row_of("text t_t | T | | x"), "t_t").has_value());
}

}  // namespace undercroft::tests
