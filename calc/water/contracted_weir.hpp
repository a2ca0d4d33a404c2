/// \file contracted_weir.hpp
/// Sharp-crested rectangular weirs in a channel wider than they are, and weirs whose tailwater stands above
/// the crest.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Narrowest crest, lowest crest above the floor, least and greatest head for which the method was tested.
inline constexpr Length least_crest_length = 0.15 * metre;
inline constexpr Length least_crest_height = 0.10 * metre;
inline constexpr Length least_weir_head = 0.03 * metre;
inline constexpr double greatest_head_per_crest_height = 2.0;

/// Flow of a sharp-crested rectangular weir by Kindsvater and Carter, contracted or over the whole channel: Q
/// = Ce (L + kb) (h + kh)^1.5 with Ce = C1 h/P + C2.
///
/// C1 and C2 by L/B as in USBR Water Measurement Manual, 3rd ed. (2001), ch. 7, straight between its rows; kh
/// = 0.003 ft; kb by L/B as in ISO 1438 (from memory), a curve there and straight between its rows here (from
/// 0.9 to 1.0, where it turns from 3.7 to -0.9 mm, that matters for crests under 0.5 m: up to 1 %). The row
/// of L/B = 0.2 stands for narrower crests too (0.3 % at most).
/// \param crest_height P, of the crest above the floor of the channel or chamber.
/// \throws Refused(domain) for a crest shorter than 0.15 m or longer than the channel is wide, a crest height
/// under 0.1 m, a head between 0 and 0.03 m or over 2 P.
[[nodiscard]] Flow contracted_weir_flow(Length crest_length, Length head, Length channel_width,
                                        Length crest_height);

/// What is left of a weir's free flow when the water below stands above its crest: Q = Qf (1 -
/// (h2/h1)^n)^0.385.
///
/// Villemonte, Engineering News-Record 139 (1947), as in FHWA HEC-22, 3rd ed. (2009), eq. 8-21.
/// \param exponent n, that of the free weir: 1.5 of a rectangular one, 2.5 of a V-notch.
/// \param tailwater_head h2 above the crest; 0 or less is a free overfall.
/// \throws Refused(domain) for a flow below 0, a head not above 0, a tailwater above the head, an exponent
/// not from 1 to 3.
[[nodiscard]] Flow drowned_weir_flow(Flow free_flow, Length head, Length tailwater_head, Share exponent);

}  // namespace undercroft::calc
