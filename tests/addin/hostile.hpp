/// \file hostile.hpp
/// What people, files and mistakes put into an argument, each with what must come of it.
#pragma once

#include <bit>
#include <limits>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "addin/catalogue/cell.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

struct HostileValue {
    enum class Wanted {
        sound,       ///< a sound answer or a refusal: whether it fits depends on the argument
        unreadable,  ///< refused as no value, in every argument of every function
        as_twin,     ///< the same outcome as `twin`
    };
    std::string name;
    addin::Cell cell;
    Wanted wanted = Wanted::sound;
    addin::Cell twin;
    bool is_table = false;  ///< a table argument may read it
};

class Hostile {
public:
    using Item = addin::OwnedGrid::Item;
    using Rows = std::vector<std::vector<Item>>;

    Hostile() {
        add_numbers();
        add_texts();
        add_look_alikes();
        add_ranges();
    }
    [[nodiscard]] const std::vector<HostileValue>& values() const { return values_; }

    /// The NaN in which Calc hands over a cell that shows #VALUE!.
    static double error_cell() { return std::bit_cast<double>(0x7ff8000000000000ULL | 519ULL); }
    static Item word(const char16_t* text) { return std::u16string(text); }

private:
    using Wanted = HostileValue::Wanted;

    void add_numbers() {
        for (const double number :
             {0.0, -0.0, 1.0, -1.0, 0.5, 2.5, 90.0, 1e-308, 5e-324, -5e-324, 1e16, 1e100, -1e100, 1e308,
              -1e308, 1.0000000001, 4294967297.0, 9007199254740993.0})
            add("number " + std::to_string(number), number);
        for (const double number :
             {std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity(),
              std::numeric_limits<double>::quiet_NaN(), error_cell()})
            add("not finite", number, Wanted::unreadable);
        add("left out", std::monostate{});
    }

    void add_texts() {
        for (const char16_t* text :
             {u"m",         u"5 m",        u"5 kg",    u"5 kPa",  u"40 %",      u"400 %",   u"-40 %",
              u"12 each",   u"2.5 each",   u"1.5H:1V", u"-1H:1V", u"34 deg",    u"90 deg",  u"180 deg",
              u"TRUE",      u"ellipse",    u"clay",    u"A",      u"-5 m",      u"0 m",     u"1e308 km",
              u"1e-300 mm", u"85 AUD/t",   u"85 AUD",  u"m3",     u"mm;m3",     u"5 m m m", u"NP",
              u"No. 3",     u"UC.VERSION", u"5 m^20",  u"0 m/s",  u"1e300 m3/s"})
            add(utf8(text), keep(text));
        // Unknown, ambiguous or misspelt; commas; formulas and errors as text; what is no text at all.
        for (const char16_t* text : {u"",
                                     u" ",
                                     u"5 furlong",
                                     u"5 gal",
                                     u"3 ton",
                                     u"5 pcf",
                                     u"1,5 m",
                                     u"1.234,5 m",
                                     u"1:2",
                                     u"=1+1",
                                     u"#NUM!",
                                     u"#VALUE!",
                                     u"Err:502",
                                     u"((((5 m",
                                     u"1/0 m",
                                     u"5 m/s/s",
                                     u"5 m^",
                                     u"5 m^1000",
                                     u"nan",
                                     u"inf m",
                                     u"0x10 m",
                                     u"5e m",
                                     u"1e400 m",
                                     u"5 5",
                                     u"- m",
                                     u"--5 m",
                                     u"5 m; 6 m",
                                     u"';--",
                                     u"%s%n",
                                     u"5 m20 m20 m20 m20 m20 m20 m9",
                                     u"5 m %^1000",
                                     u"5 \u043C",
                                     u"\uFF15 m",
                                     u"5 \uFF4D",
                                     u"\uFF15\u3000\uFF4D",
                                     u"\u0665 m",
                                     u"\u096B m",
                                     u"\u09EB m",
                                     u"\u0E55 m",
                                     u"5\u3000m",
                                     u"\u2464 m",
                                     u"\u2164 m",
                                     u"5 m\u200F",
                                     u"\u202E5 m",
                                     u"5\u200Bm",
                                     u"\uFEFF5 m",
                                     u"5 m\u0301",
                                     u"5 m\u00AD",
                                     u"5 \u33A5",
                                     u"5\u066B5 m",
                                     u"\u0661\u0662 \u0645"})
            add(utf8(text), keep(text), Wanted::unreadable);
        add("embedded NUL", keep(std::u16string(u"5 m\0x", 5)), Wanted::unreadable);
        add("NUL before the unit", keep(std::u16string(u"5\0 m", 4)), Wanted::unreadable);
        add("half a surrogate pair", keep(std::u16string(1, char16_t(0xD83D))), Wanted::unreadable);
        add("32768 m", keep(std::u16string(32768, u'm')), Wanted::unreadable);
        add("32768 digits", keep(std::u16string(32768, u'9')), Wanted::unreadable);
        add("32768 blanks", keep(std::u16string(32768, u' ')), Wanted::unreadable);
        add("32768 (", keep(u"5 " + std::u16string(32768, u'(')), Wanted::unreadable);
    }

    /// What looks the same reads the same.
    void add_look_alikes() {
        add_twin(u"5\u00A0m", u"5 m");
        add_twin(u"5\u202Fm", u"5 m");
        add_twin(u"\u00A05 m\u00A0", u"5 m");
        add_twin(u"\t5  m\n", u"5 m");
        add_twin(u"\u22125 m", u"-5 m");
        add_twin(u"5 m\u00B2", u"5 m2");
        add_twin(u"5 \u03BCm", u"5 \u00B5m");
        add_twin(u"5 kg\u00B7m\u207B\u00B3", u"5 kg/m3");
        add_twin(u"40\u00A0%", u"40 %");
        add_twin(u" ellipse ", u"ellipse");
    }

    void add_ranges() {
        const Item number = 5.0;
        add_one("1x1 of a number", number, 5.0);
        add_one("1x1 of a text", word(u"5 m"), keep(u"5 m"));
        add_one("1x1 of a word", word(u"ellipse"), keep(u"ellipse"));
        add_range("1x1 blank", {{Item()}});
        add_range("1x1 of NaN", {{Item(std::numeric_limits<double>::quiet_NaN())}}, Wanted::unreadable);
        add_range("1x1 of infinity", {{Item(std::numeric_limits<double>::infinity())}}, Wanted::unreadable);
        add_range("1x1 of an error", {{Item(error_cell())}}, Wanted::unreadable);
        add_range("pair", {{number, word(u"m")}});
        add_range("pair of the wrong dimension", {{number, word(u"AUD")}});
        add_range("pair with an unknown unit", {{number, word(u"furlong")}}, Wanted::unreadable);
        add_range("pair with an ambiguous unit", {{number, word(u"gal")}}, Wanted::unreadable);
        add_range("pair with a full-width unit", {{number, word(u"\uFF4D")}}, Wanted::unreadable);
        add_range("pair with a right-to-left mark", {{number, word(u"m\u200F")}}, Wanted::unreadable);
        add_range("pair without a number", {{Item(), word(u"m")}});
        add_range("pair without a unit", {{number, Item()}});
        add_range("pair of NaN", {{Item(std::numeric_limits<double>::quiet_NaN()), word(u"m")}},
                  Wanted::unreadable);
        add_range("pair of an error and its unit", {{Item(error_cell()), word(u"m")}}, Wanted::unreadable);
        add_range("pair beyond double", {{Item(1e308), word(u"km")}});
        add_range("pair the wrong way round", {{word(u"m"), number}});
        add_range("pair of a text number", {{word(u"5"), word(u"m")}}, Wanted::unreadable);
        add_range("1x3", {{number, Item(6.0), Item(7.0)}});
        add_range("3x1", {{number}, {Item(6.0)}, {Item(7.0)}});
        add_range("number over unit", {{number}, {word(u"m")}});
        add_range("unit row only", {{word(u"m"), word(u"m3")}});
        add_range("heading and units", {{word(u"depth"), word(u"m3")}, {number, number}}, Wanted::unreadable);
        add_range("duplicated x", {{Item(0.0), Item(0.0)}, {Item(1.0), Item(2.0)}, {Item(1.0), Item(3.0)}});
        add_range("unsorted", {{Item(2.0), Item(0.0)}, {Item(1.0), Item(2.0)}});
        add_range("a gap", {{Item(0.0), Item(0.0)}, {Item(), Item()}, {Item(1.0), Item(2.0)}});
        add_range("NaN in a range",
                  {{Item(0.0), Item(std::numeric_limits<double>::quiet_NaN())}, {number, number}},
                  Wanted::unreadable);
        add_range("an error in a range", {{Item(0.0), number}, {number, Item(error_cell())}},
                  Wanted::unreadable);
        add_range("infinity in a range",
                  {{Item(0.0), Item(0.0)}, {number, Item(std::numeric_limits<double>::infinity())}},
                  Wanted::unreadable);
        add_range("columns of money",
                  {{word(u"kg"), word(u"AUD")}, {Item(0.0), Item(0.0)}, {number, number}});
        add_range("ragged", {{Item(0.0), Item(0.0)}, {number}});
        add_range("ragged with NUL text", {{Item(0.0), Item(std::u16string(1, u'\0'))}, {number}},
                  Wanted::unreadable);
        add_range("1000x50", Rows(1000, std::vector<Item>(50, Item(1.0))));
        add_range("1000x50 blank", Rows(1000, std::vector<Item>(50)));
        add_range("1000x50 of text", Rows(1000, std::vector<Item>(50, word(u"5 furlong"))),
                  Wanted::unreadable);
        add_range("1000x2 rising", [] {
            Rows rows;
            for (int i = 0; i < 1000; ++i) rows.push_back({Item(1.0 * i), Item(1.0 * i)});
            return rows;
        }());
        add_range("0x0", {});
    }

    static std::string utf8(std::u16string_view text) { return "'" + to_utf8(text) + "'"; }

    std::u16string_view keep(std::u16string text) {
        texts_.push_back(std::make_unique<std::u16string>(std::move(text)));
        return *texts_.back();
    }
    addin::Cell keep(Rows rows) {
        grids_.push_back(std::make_unique<addin::OwnedGrid>(std::move(rows)));
        return static_cast<const addin::Grid*>(grids_.back().get());
    }
    void add(std::string name, addin::Cell cell, Wanted wanted = Wanted::sound) {
        values_.push_back({std::move(name), cell, wanted, {}, false});
    }
    void add_range(std::string name, Rows rows, Wanted wanted = Wanted::sound) {
        values_.push_back({std::move(name), keep(std::move(rows)), wanted, {}, true});
    }
    void add_twin(const char16_t* text, const char16_t* twin) {
        values_.push_back({utf8(text), keep(text), Wanted::as_twin, keep(twin), false});
    }
    /// A range of one cell reads as its cell.
    void add_one(std::string name, const Item& item, addin::Cell twin) {
        values_.push_back({std::move(name), keep(Rows{{item}}), Wanted::as_twin, twin, true});
    }

    std::vector<HostileValue> values_;
    std::vector<std::unique_ptr<std::u16string>> texts_;
    std::vector<std::unique_ptr<addin::OwnedGrid>> grids_;
};

}  // namespace undercroft::tests
