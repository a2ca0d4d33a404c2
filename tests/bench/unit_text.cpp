// Unit text to unit, and text to quantity: seen before and not, with the allocations counted.
#include <atomic>
#include <cstdlib>
#include <new>
#include <string>

#include "tests/bench/paired.hpp"
#include "units/text.hpp"
#include "units/unit_memory.hpp"

namespace {

std::size_t allocations = 0;

}  // namespace

void* operator new(std::size_t size) {
    ++allocations;
    if (void* memory = std::malloc(size)) return memory;
    throw std::bad_alloc();
}
void operator delete(void* memory) noexcept {
    std::free(memory);
}
void operator delete(void* memory, std::size_t) noexcept {
    std::free(memory);
}

namespace undercroft::bench {

namespace {

const std::vector<std::u16string> texts = {u"mm",     u"m3",      u"kN/m3", u"L/s",     u"kPa",
                                           u"mm/h",   u"m^0.5/s", u"ft3",   u"deg",     u"acre-ft",
                                           u"oz/yd2", u"AUD/t",   u"m²",    u"kg/(m s)"};
const std::vector<std::u16string> quantities = {u"305 mm",  u"1.5 acre-ft", u"12 ft 6 in",
                                                u"1.5H:1V", u"40 %",        u"85 AUD/t"};

double sum = 0;  // so that nothing is left out

template <class F>
double nanoseconds_each(int rounds, std::size_t count, const F& once) {
    std::vector<double> each;
    for (int sample = 0; sample < 9; ++sample) {
        const double time = seconds([&] {
            for (int i = 0; i < rounds; ++i) once();
        });
        each.push_back(time / rounds / static_cast<double>(count) * 1e9);
    }
    return median(each);
}

void measure() {
    std::vector<std::string> in_utf8;
    in_utf8.reserve(std::size(texts));
    for (const auto& text : texts) in_utf8.push_back(to_utf8(text));
    const auto hot = [] {
        for (const auto& text : texts) sum += remembered_unit(text).scale.numerator;
    };
    const auto cold = [&] {
        for (const auto& text : in_utf8) sum += parse_unit(text).scale.numerator;
    };
    const auto hot_quantities = [] {
        for (const auto& text : quantities) sum += remembered_quantity(text).value;
    };
    hot();
    hot_quantities();
    cold();
    const std::size_t before = allocations;
    hot();
    hot_quantities();
    report("unit.hot.allocations", static_cast<double>(allocations - before), "%.0f");
    report("unit.hot.ns", nanoseconds_each(20000, texts.size(), hot));
    report("unit.cold.ns", nanoseconds_each(2000, texts.size(), cold));
    report("quantity.hot.ns", nanoseconds_each(20000, quantities.size(), hot_quantities));
    report("quantity.cold.ns", nanoseconds_each(2000, quantities.size(), [] {
               for (const auto& text : quantities) sum += parse_quantity(to_utf8(text)).value;
           }));
    if (sum == 0) std::exit(1);
}

}  // namespace

}  // namespace undercroft::bench

int main() {
    undercroft::bench::measure();
    return 0;
}
