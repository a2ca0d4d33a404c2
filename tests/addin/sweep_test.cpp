// Every function x every argument x hostile values, at the border and without an office: the answer is a
// number that is finite, a text or table, or a refusal with a sentence; never anything else.
#include <chrono>
#include <cmath>
#include <limits>
#include <map>

#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/evaluate.hpp"
#include "tests/addin/desk.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace addin;

namespace {

/// Values that people, files and mistakes put into an argument.
class Hostile {
public:
    Hostile() {
        for (const double number :
             {0.0, -0.0, 1.0, -1.0, 0.5, 1e-308, 5e-324, 1e308, -1e308, 1e16, 0.1, 2.5,
              std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()})
            cells.emplace_back(number);
        for (const char16_t* text :
             {u"",          u" ",         u"m",        u"5 m",    u"5 kg",  u"5 kPa",     u"40 %",
              u"12 each",   u"1.5H:1V",   u"34 deg",   u"1,5 m",  u"1:2",   u"5 gal",     u"3 ton",
              u"5 furlong", u"TRUE",      u"ellipse",  u"clay",   u"A",     u"-5 m",      u"0 m",
              u"1e308 km",  u"1e-300 mm", u"85 AUD/t", u"m3",     u"mm;m3", u"5 m\u200F", u"\u0665 m",
              u"\uFF15 m",  u"5\u00A0m",  u"5 \uFF4D", u"5 m\0x", u"=1+1",  u"#NUM!",     u"5 m m m",
              u"((((5 m",   u"1/0 m",     u"NP",       u"No. 3"})
            cells.emplace_back(std::u16string_view(text));
        cells.emplace_back(std::u16string_view(long_text));
        cells.emplace_back(std::monostate{});
        using Item = OwnedGrid::Item;
        add_grid({{Item(5.0)}});
        add_grid({{Item(5.0), Item(std::u16string(u"m"))}});
        add_grid({{Item(5.0), Item(std::u16string(u"kg"))}});
        add_grid({{Item(), Item(std::u16string(u"m"))}});
        add_grid({{Item(5.0), Item()}});
        add_grid({{Item(std::u16string(u"m")), Item(5.0)}});
        add_grid({{Item(5.0), Item(6.0), Item(7.0)}});
        add_grid({{Item(5.0)}, {Item(std::u16string(u"m"))}});
        add_grid({{Item(std::u16string(u"m")), Item(std::u16string(u"m3"))}});               // unit row only
        add_grid({{Item(0.0), Item(0.0)}, {Item(1.0), Item(2.0)}, {Item(1.0), Item(3.0)}});  // duplicated x
        add_grid({{Item(2.0), Item(0.0)}, {Item(1.0), Item(2.0)}});                          // unsorted
        add_grid({{Item(0.0), Item(0.0)}, {Item(), Item()}, {Item(1.0), Item(2.0)}});        // a gap
        add_grid({{Item(0.0), Item(std::nan(""))}, {Item(1.0), Item(2.0)}});
        add_grid({{Item(std::u16string(u"kg")), Item(std::u16string(u"AUD"))},
                  {Item(0.0), Item(0.0)},
                  {Item(1.0), Item(2.0)}});
        add_grid({{Item(0.0), Item(0.0)}, {Item(1.0)}});  // ragged
        add_grid(std::vector<std::vector<Item>>(1000, std::vector<Item>(50, Item(1.0))));
        add_grid({});
    }
    std::vector<Cell> cells;

private:
    void add_grid(std::vector<std::vector<OwnedGrid::Item>> items) {
        grids_.push_back(std::make_unique<OwnedGrid>(std::move(items)));
        cells.emplace_back(static_cast<const Grid*>(grids_.back().get()));
    }
    std::u16string long_text = std::u16string(32768, u'm');
    std::vector<std::unique_ptr<OwnedGrid>> grids_;
};

/// Arguments that every function accepts: those of its first worked example.
std::map<std::string, std::vector<FormulaValue>> good_arguments() {
    const Desk desk;
    std::map<std::string, std::vector<FormulaValue>> arguments;
    for (const auto& example : worked_examples().rows)
        walk(parse_formula(example.formula), [&](const Node& node) {
            if (node.kind != Node::Kind::call || arguments.contains(node.text)) return;
            if (const Function* function = find_function(node.text))
                arguments[node.text] = desk.arguments(node, *function);
        });
    return arguments;
}

bool is_sound(const Answer& answer) {
    if (const double* number = std::get_if<double>(&answer)) return std::isfinite(*number);
    if (const ResultRows* rows = std::get_if<ResultRows>(&answer))
        for (const auto& row : *rows)
            for (const ResultItem& item : row)
                if (const double* number = std::get_if<double>(&item);
                    number != nullptr && !std::isfinite(*number))
                    return false;
    return true;
}

}  // namespace

TEST_CASE("hostile values end in a sound answer or a refusal with a sentence") {
    const Hostile hostile;
    const auto arguments = good_arguments();
    long tried = 0;
    for (const Function& function : all_functions()) {
        const auto good = arguments.find(function.name);
        if (function.reads_cell || good == arguments.end()) continue;
        const std::vector<Cell> base = cells_of(good->second);
        CAPTURE(function.name);
        REQUIRE(is_sound(function.call(base)));
        for (std::size_t i = 0; i < function.parameters.size(); ++i) {
            for (std::size_t h = 0; h < hostile.cells.size(); ++h) {
                std::vector<Cell> cells = base;
                cells[i] = hostile.cells[h];
                CAPTURE(function.parameters[i].name, shown_as_given(hostile.cells[h]));
                const auto start = std::chrono::steady_clock::now();
                try {
                    const bool sound = is_sound(function.call(cells));
                    REQUIRE(sound);
                } catch (const Refused& refused) {
                    const std::string sentence = refused.what();
                    const bool is_sentence = sentence.size() > 10 && sentence.size() < 600;
                    CAPTURE(sentence);
                    REQUIRE(is_sentence);
                } catch (const std::exception& error) {
                    FAIL("not a refusal: " << error.what());
                }
                const auto seconds =
                    std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
                CHECK(seconds < 2);
                ++tried;
            }
        }
    }
    CHECK(tried > 10000);
}

TEST_CASE("a quantity of the wrong dimension in any argument is refused as such, with the argument's name") {
    const auto arguments = good_arguments();
    const Cell wrong = std::u16string_view(u"5 AUD");  // no function of the trade takes money there
    for (const Function& function : all_functions()) {
        const auto good = arguments.find(function.name);
        if (function.reads_cell || good == arguments.end()) continue;
        for (std::size_t i = 0; i < function.parameters.size(); ++i) {
            if (function.parameters[i].unit.empty() ||
                function.parameters[i].unit.find(';') != std::string::npos)
                continue;
            std::vector<Cell> cells = cells_of(good->second);
            cells[i] = wrong;
            CAPTURE(function.name, function.parameters[i].name);
            CHECK_THROWS_MATCHES(function.call(cells), Refused,
                                 refuses_value(function.parameters[i].name + ": "));
        }
    }
}

}  // namespace undercroft::tests
