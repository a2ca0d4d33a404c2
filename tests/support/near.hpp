/// \file near.hpp
/// Nearness of quantities, and refusals, as Catch2 matchers.
#pragma once

#include <cmath>
#include <cstdint>
#include <random>
#include <string>

#include "tests/support/catch.hpp"
#include "units/quantity.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

/// All digits in SI, and what a person would say: `1.23e-05 (SI), 1.23e-05 m`.
template <class Q>
std::string in_si(const Q& quantity) {
    return exact_text(quantity.value()) + " (SI), " + text_of(as_quantity(quantity));
}

/// |actual - expected| <= tolerance, all three in the same dimension.
template <class Q>
class IsNear : public Catch::MatcherBase<Q> {
public:
    IsNear(Q expected, Q tolerance) : expected_(expected), tolerance_(tolerance) {}

    bool match(const Q& actual) const override {
        return std::abs(actual.value() - expected_.value()) <= tolerance_.value();
    }
    std::string describe() const override {
        return "is within " + exact_text(tolerance_.value()) + " of " + in_si(expected_);
    }

private:
    Q expected_;
    Q tolerance_;
};

/// Near within a relative tolerance; 1e-12 unless said otherwise.
template <class Q>
IsNear<Q> is_near(Q expected, double relative = 1e-12) {
    return {expected, Q::from_value(relative * std::abs(expected.value()))};
}
template <class Q>
IsNear<Q> is_within(Q expected, Q tolerance) {
    return {expected, tolerance};
}

/// A refusal of that cause whose sentence holds this text.
class Refuses : public Catch::MatcherBase<Refused> {
public:
    Refuses(Cause cause, std::string part) : cause_(cause), part_(std::move(part)) {}
    bool match(const Refused& refused) const override {
        return refused.cause() == cause_ && std::string(refused.what()).find(part_) != std::string::npos;
    }
    std::string describe() const override {
        return "is a refusal of cause " + std::to_string(static_cast<int>(cause_)) + " that says '" + part_ +
               "'";
    }

private:
    Cause cause_;
    std::string part_;
};
inline Refuses refuses_value(std::string part) {
    return {Cause::value, std::move(part)};
}
inline Refuses refuses_domain(std::string part) {
    return {Cause::domain, std::move(part)};
}
inline Refuses has_no_answer(std::string part) {
    return {Cause::no_answer, std::move(part)};
}

/// Random inputs for property tests; the seed is fixed, so that a failure comes again.
class Random {
public:
    explicit Random(std::uint64_t seed = 20261125) : engine_(seed) {}
    double between(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(engine_);
    }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(engine_); }
    template <class D>
    Measure<D> between(Measure<D> low, Measure<D> high) {
        using Q = Measure<D>;
        return Q::from_value(between(low.value(), high.value()));
    }

private:
    std::mt19937_64 engine_;
};

}  // namespace undercroft::tests

namespace Catch {
template <class U>
struct StringMaker<boost::units::quantity<U, double>> {
    static std::string convert(const boost::units::quantity<U, double>& quantity) {
        return undercroft::tests::in_si(quantity);
    }
};
template <>
struct StringMaker<undercroft::Refused> {
    static std::string convert(const undercroft::Refused& refused) {
        return std::string(refused.what()) + " (cause " + std::to_string(static_cast<int>(refused.cause())) +
               ")";
    }
};
}  // namespace Catch
