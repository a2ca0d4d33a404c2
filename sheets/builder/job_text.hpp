/// \file job_text.hpp
/// The numbers of one job as text: what a person would type into the template.
#pragma once

#include <functional>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace undercroft::sheets {

struct JobText {
    std::map<std::string, std::string> values;                          ///< `305 mm`, or a text
    std::map<std::string, std::vector<std::vector<std::string>>> rows;  ///< of a grid or a list's column
    std::vector<std::string> main_results;                              ///< keys to print
    std::set<std::string> failing;                                      ///< checks that this job must fail
    std::set<std::string> confirmed;  ///< inputs that keep the template's value, looked at and found right
};

/// The text of another job, by the name after `like`, of a data sheet after `take`, or of rows that are
/// pasted.
using OtherJob = std::function<std::string(const std::string& name)>;

/// A job that is `like` another starts from that one's numbers and results; its own come on top.
/// The lines of a text that it takes, such as the data sheet of a unit, stand as if they were its own.
/// \throws TextMistake that names the line.
[[nodiscard]] JobText read_job(std::string_view text, const OtherJob& other);

}  // namespace undercroft::sheets
