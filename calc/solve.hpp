/// \file solve.hpp
/// Roots, minima and integrals of functions of quantities, found by Boost.Math, which computes with numbers
/// only.
#pragma once

#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/roots.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cstdint>
#include <exception>
#include <type_traits>
#include <utility>

#include "units/refused.hpp"

namespace undercroft::calc {

namespace detail {

/// The number that Boost.Math is given for a quantity, its value in SI units, and the way back.
template <class Q>
[[nodiscard]] double in_si(const Q& x) {
    if constexpr (std::is_arithmetic_v<Q>)
        return x;
    else
        return x.value();
}
template <class Q>
[[nodiscard]] Q from_si(double x) {
    if constexpr (std::is_arithmetic_v<Q>)
        return x;
    else
        return Q::from_value(x);
}

template <class Q, class F>
[[nodiscard]] auto on_numbers(const F& f) {
    return [&f](double x) { return in_si(f(from_si<Q>(x))); };
}

/// What a search finds; that it finds nothing is a refusal like any other.
template <class Search>
[[nodiscard]] auto found_by(const Search& search) {
    try {
        return search();
    } catch (const Refused&) {
        throw;
    } catch (const std::exception&) {
        throw Refused(Cause::no_convergence, "no answer is found: an argument is too large or too small");
    }
}

}  // namespace detail

/// Where f is 0 between two places at which its signs differ, to the last digit (TOMS 748).
template <class Q, class F>
[[nodiscard]] Q root_between(const F& f, Q low, Q high) {
    std::uintmax_t iterations = 200;
    const boost::math::tools::eps_tolerance<double> tolerance(52);
    const auto [below, above] = detail::found_by([&] {
        return boost::math::tools::toms748_solve(detail::on_numbers<Q>(f), detail::in_si(low),
                                                 detail::in_si(high), tolerance, iterations);
    });
    return detail::from_si<Q>((below + above) / 2);
}

/// The same from a guess and with its slope, f giving both (Newton and Raphson); by TOMS 748 where that
/// fails.
template <class Q, class F>
[[nodiscard]] Q root_by_slope(const F& f, Q guess, Q low, Q high) {
    constexpr int two_thirds_of_the_digits = 36;  // when a step is as small, the next is nothing
    const auto on_numbers = [&f](double x) {
        const auto [value, slope] = f(detail::from_si<Q>(x));
        return std::pair(detail::in_si(value), detail::in_si(slope));
    };
    try {
        return detail::from_si<Q>(
            boost::math::tools::newton_raphson_iterate(on_numbers, detail::in_si(guess), detail::in_si(low),
                                                       detail::in_si(high), two_thirds_of_the_digits));
    } catch (const boost::math::evaluation_error&) {
        return root_between([&f](Q x) { return f(x).first; }, low, high);
    }
}

/// Where f is smallest between two places, with one dip between them, and how small (Brent's method).
template <class Q, class F>
[[nodiscard]] auto minimum_between(const F& f, Q low, Q high) {
    constexpr int half_of_the_digits = 26;  // near a minimum no search can tell more of them apart
    const auto [at, value] = boost::math::tools::brent_find_minima(
        detail::on_numbers<Q>(f), detail::in_si(low), detail::in_si(high), half_of_the_digits);
    return std::pair(detail::from_si<Q>(at), detail::from_si<decltype(f(low))>(value));
}

/// Integral of f between two places, where it is smooth: exact for polynomials to the 23rd degree, else to
/// 1e-12 (Gauss-Kronrod).
template <class Q, class F>
[[nodiscard]] auto integral_between(const F& f, Q low, Q high) {
    using Area = decltype(f(low) * low);
    constexpr unsigned halvings = 10;
    return detail::from_si<Area>(boost::math::quadrature::gauss_kronrod<double, 15>::integrate(
        detail::on_numbers<Q>(f), detail::in_si(low), detail::in_si(high), halvings, 1e-12));
}

}  // namespace undercroft::calc
