/// \file paired.hpp
/// Two things timed in turn, A B A B ...: on a machine that others use too, only their ratio means something.
#pragma once

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <string>
#include <vector>

namespace undercroft::bench {

template <class F>
[[nodiscard]] double seconds(const F& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

[[nodiscard]] inline double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    const std::size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
}

struct Paired {
    std::vector<double> a;
    std::vector<double> b;

    [[nodiscard]] double ratio() const {
        std::vector<double> ratios;
        for (std::size_t i = 0; i < a.size(); ++i) ratios.push_back(a[i] / b[i]);
        return median(ratios);
    }
    /// Of pairs, a less b.
    [[nodiscard]] double difference() const {
        std::vector<double> differences;
        for (std::size_t i = 0; i < a.size(); ++i) differences.push_back(a[i] - b[i]);
        return median(differences);
    }
};

/// One round of both that is not counted, then `rounds` that are.
template <class A, class B>
[[nodiscard]] Paired paired(int rounds, const A& a, const B& b) {
    Paired times;
    for (int i = 0; i <= rounds; ++i) {
        const double of_a = seconds(a);
        const double of_b = seconds(b);
        if (i == 0) continue;
        times.a.push_back(of_a);
        times.b.push_back(of_b);
    }
    return times;
}

/// One figure of the page: a key that its text names, and a number.
inline void report(const std::string& key, double value, const char* format = "%.3g") {
    std::printf("%s\t", key.c_str());
    std::printf(format, value);
    std::printf("\n");
    std::fflush(stdout);
}

}  // namespace undercroft::bench
