#include "sheets/builder/job_text.hpp"

#include "sheets/builder/lines.hpp"

namespace undercroft::sheets {

JobText read_job(std::string_view text) {
    JobText job;
    for (const Line& line : lines_of(text)) {
        if (line.text.starts_with("show ")) {
            job.main_results.push_back(trimmed(line.text.substr(5)));
            continue;
        }
        const std::size_t sign = line.text.find_first_of("=:");
        if (sign == std::string::npos)
            throw TextMistake(line.number, "wanted: KEY = VALUE, KEY : A ; B or show KEY");
        const std::string key = trimmed(line.text.substr(0, sign));
        const std::string value = trimmed(line.text.substr(sign + 1));
        if (line.text[sign] == ':')
            job.rows[key].push_back(fields_of(value, ';'));
        else if (!job.values.emplace(key, value).second)
            throw TextMistake(line.number, "the key " + key + " stands twice");
    }
    return job;
}

}  // namespace undercroft::sheets
