/// \file outlet.hpp
/// Flow through one outlet under a steady head: orifices and sharp-crested weirs, free outfall.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Flow of a circular orifice under a head above its centre: Q = C A sqrt(2 g h).
///
/// FHWA HEC-22, orifice equation; where the outfall is drowned the head is the difference of levels.
/// \throws Refused(domain) for a head below half of the diameter, where the orifice is part full and the
/// equation does not hold; for a diameter not above 0, a head below 0, a coefficient not above 0 or over 1.
[[nodiscard]] Flow orifice_flow(Length diameter, Length head, Share coefficient);

/// Diameter of the circular orifice that passes a flow under a head above its centre: the inverse.
/// \throws Refused(domain) where that diameter is over twice the head, so that the orifice would be part
/// full; for a flow or head not above 0, a coefficient not above 0 or over 1.
[[nodiscard]] Length orifice_diameter(Flow flow, Length head, Share coefficient);

/// Flow of a circular orifice for a depth above its lowest point, also while it is part full.
///
/// From the crown up it is orifice_flow under the head above the centre. Below, the orifice is a circular
/// weir: strips dz of width b(z), each under its own head, give Q ~ integral of b(z) sqrt(h - z) dz (Bos,
/// Discharge Measurement Structures, 3rd ed. 1989, sec. 5.4, from memory), here with the constant that makes
/// both laws meet at the crown.
/// \throws Refused(domain) for a diameter not above 0, a depth below 0, a coefficient not above 0 or over 1.
[[nodiscard]] Flow part_full_orifice_flow(Length diameter, Length depth, Share coefficient);

/// The coefficients that the formulas of weir_flow and notch_flow are printed with.
inline constexpr WeirCoefficient sharp_crest = WeirCoefficient::from_value(1.84);
inline constexpr WeirCoefficient sharp_notch = WeirCoefficient::from_value(1.38);

/// Flow of a sharp-crested weir: Q = C (L - 0.1 n h) h^1.5 with n end contractions.
///
/// Francis formula as in FHWA HEC-22; C = 1.84 m^0.5/s or 3.33 ft^0.5/s. Francis gave it for heads up to a
/// third of the crest length: beyond, with contractions, it gives too little (a third at 1.3 L), which
/// understates what is released; contracted_weir_flow holds there.
/// \throws Refused(domain) for a crest length or coefficient not above 0, a head below 0, contractions that
/// are no whole number, a head over L/3 with contractions, or more than 6 L/h contractions.
[[nodiscard]] Flow weir_flow(Length crest_length, Length head, WeirCoefficient coefficient,
                             Count end_contractions);

/// Flow of a V-notch weir: Q = C tan(theta/2) h^2.5; C = 1.38 m^0.5/s or 2.5 ft^0.5/s.
///
/// FHWA HEC-22, V-notch weir equation.
/// \throws Refused(domain) for an angle not between 0 and 180 degrees, a head below 0, a coefficient not
/// above 0.
[[nodiscard]] Flow notch_flow(Angle angle, Length head, WeirCoefficient coefficient);

/// The coefficient that Cipolletti's weir is printed with.
inline constexpr WeirCoefficient cipolletti_crest = WeirCoefficient::from_value(1.859);

/// Flow of a sharp-crested trapezoidal weir, its sides flaring: Q = C (L - 0.1 n h + 0.8 z h) h^1.5.
///
/// The crest by Francis, the two triangles beside it by the orifice law in strips, (8/15)/(2/3) = 0.8 of what
/// a crest as wide as z h passes. With z = 1/4 and both ends contracted one takes what the other gives: the
/// weir of Cipolletti, Q = 3.367 L h^1.5 in feet (USBR Water Measurement Manual, 3rd ed. 2001, ch. 7, from
/// memory), here the default. \param side_slope z, how far a side flares per height: 0.25 of Cipolletti.
/// \throws Refused(domain) for a crest length or coefficient not above 0, a head below 0 or over a third of
/// the crest length, a side slope not from 0 to 5, contractions that are not 0, 1 or 2.
[[nodiscard]] Flow trapezoidal_weir_flow(Length crest_length, Length head, Share side_slope,
                                         WeirCoefficient coefficient, Count end_contractions);

}  // namespace undercroft::calc
