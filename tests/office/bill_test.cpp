// The bill of the filled demo job, by hand: what each item costs, what the sections and trades come to, and
// that nothing bought is forgotten.
#include <numeric>
#include <string>
#include <vector>

#include "tests/office/desk.hpp"

namespace undercroft::tests {

namespace {

constexpr int items = 20;
constexpr int bought = 7;

class Bill {
public:
    Bill() : job_(the_office().open_copy(filled_job)) { job_.recalculate(); }

    [[nodiscard]] const sheets::Document& job() const { return job_; }
    [[nodiscard]] double value(const std::string& key, int row = 0) const {
        INFO(key);
        REQUIRE(job_.named(key, 0, row)->getError() == 0);
        return job_.named(key, 0, row)->getValue();
    }
    [[nodiscard]] std::string text(const std::string& key, int row = 0) const {
        return sheets::shown(job_.named(key, 0, row));
    }
    void type(const std::string& key, const char* content, int row = 0, int right = 0) const {
        job_.named(key, right, row)->setFormula(rtl::OUString::createFromAscii(content));
        job_.recalculate();
    }
    [[nodiscard]] double cost(int row) const { return value("bill_item_cost", row); }

private:
    sheets::Document job_;
};

}  // namespace

TEST_CASE("each item is its quantity by its rates, each section its items, and the price what comes on them",
          "[people]") {
    const Bill bill;
    std::vector<double> by_section(10, 0);
    const auto add = [&](const std::string& list, int row) {
        const double section = bill.value(list + "_section", row);
        by_section.at(static_cast<std::size_t>(section) - 1) += bill.value(list + "_cost", row);
    };
    for (int row = 0; row < items; ++row) {
        INFO("item " << row + 1);
        const double rate = bill.value("bill_item_labour", row) + bill.value("bill_item_plant", row) +
                            bill.value("bill_item_material", row);
        CHECK(bill.cost(row) == Approx(bill.value("bill_item_quantity", row) * rate).epsilon(1e-12));
        add("bill_item", row);
    }
    for (int row = 0; row < bought; ++row) add("bill_bought", row);
    for (int row = 0; row < 10; ++row)
        CHECK(bill.value("bill_section_cost", row) == Approx(by_section[static_cast<std::size_t>(row)]));
    const double works = std::accumulate(by_section.begin(), by_section.end(), 0.0);
    CHECK(bill.value("bill_works") == Approx(works));
    CHECK(bill.value("bill_labour") + bill.value("bill_plant") + bill.value("bill_material") ==
          Approx(works));
    CHECK(bill.value("bill_net") == Approx(works * 1.12 * 1.10 * 1.08));
    CHECK(bill.value("bill_price") == Approx(works * 1.12 * 1.10 * 1.08 * 1.10));
    CHECK(bill.value("bill_per_stored") == Approx(bill.value("bill_net") / bill.value("storage_provided")));
    CHECK(bill.cost(0) == Approx(bill.value("pit_volume") * (1.7 + 5.4)));
    CHECK(bill.cost(17) == Approx(36 * (40 + 23 + 88)));
}

TEST_CASE("what the bill buys and hires is the order list, whole", "[people]") {
    const Bill bill;
    const auto sum = [&] {
        double all = 0;
        for (int row = 0; row < bought; ++row) {
            CHECK(bill.value("bill_bought_quantity", row) * bill.value("bill_bought_rate", row) ==
                  Approx(bill.value("bill_bought_cost", row)));
            all += bill.value("bill_bought_cost", row);
        }
        return all;
    };
    CHECK(sum() == Approx(bill.value("cost_total")));
    CHECK(bill.value("bill_bought_cost", 5) == 0);  // no liner, no fill
    CHECK(bill.value("bill_bought_cost", 6) == 0);
    bill.type("bed_lined", "yes");
    bill.job().named("reuse_share")->setValue(5);
    bill.job().recalculate();
    CHECK(bill.value("bill_bought_cost", 5) > 1000);
    CHECK(bill.value("bill_bought_cost", 6) > 1000);
    CHECK(sum() == Approx(bill.value("cost_total")));
}

TEST_CASE("a rate is taken in its own unit, and only in the order list's currency", "[people]") {
    const Bill bill;
    const double before = bill.cost(0);
    bill.type("bill_item_material", "AUD/yd3", 0, 1);
    CHECK(bill.cost(0) == Approx(before / (0.9144 * 0.9144 * 0.9144)));
    bill.type("bill_item_material", "AUD/m2", 0, 1);
    CHECK(bill.job().named("bill_item_cost")->getError() == value_error);
    bill.type("bill_item_material", "NZD/m3", 0, 1);
    CHECK(bill.job().named("bill_item_cost")->getError() == value_error);
    CHECK(bill.job().named("bill_net")->getError() != 0);
}

TEST_CASE("rates wait to be looked at when they are old, of no date or of no source", "[people]") {
    const Bill bill;
    const auto verdict = [&] { return bill.text("bill_section_verdict"); };
    CHECK(verdict() == "PASS");
    bill.type("bill_section_priced", "'2025-11-20");  // 365 days before the bill
    CHECK(verdict() == "PASS");
    bill.type("bill_section_priced", "'2025-11-19");
    CHECK(verdict() == "open");
    bill.type("bill_section_priced", "=DATE(2026;1;31)");  // as Calc keeps a date that is typed
    CHECK(verdict() == "PASS");
    bill.type("bill_section_source", "");
    CHECK(verdict() == "open");
    bill.type("bill_section_source", "Book");
    bill.type("bill_section_priced", "");
    CHECK(verdict() == "open");
}

}  // namespace undercroft::tests
