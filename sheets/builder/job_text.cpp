#include "sheets/builder/job_text.hpp"

#include <optional>

#include "sheets/builder/lines.hpp"

namespace undercroft::sheets {

namespace {

/// The rest of a line that starts with this word.
std::optional<std::string> after(std::string_view word, const std::string& line) {
    if (!line.starts_with(word) || line.size() == word.size() || line[word.size()] != ' ')
        return std::nullopt;
    return trimmed(line.substr(word.size()));
}

/// What a text names lies beside that text: names are taken from its folder.
OtherJob beside(const OtherJob& other, const std::string& name) {
    const std::string folder = name.substr(0, name.rfind('/') + 1);
    return [other, folder](const std::string& named) { return other(folder + named); };
}

/// Puts what a taken text says into the job, as if it stood there. \throws TextMistake for a key that stands
/// twice.
void take(JobText&& taken, int line, JobText& job, std::set<std::string>& own) {
    const auto put = [&](auto& from, auto& into) {
        for (auto& [key, value] : from) {
            if (!own.insert(key).second) throw TextMistake(line, "the key " + key + " stands twice");
            into[key] = std::move(value);
        }
    };
    put(taken.values, job.values);
    put(taken.rows, job.rows);
    job.confirmed.merge(taken.confirmed);
}

JobText read(std::string_view text, const OtherJob& other, int depth) {
    constexpr int deepest = 8;
    JobText job;
    std::set<std::string> own;
    for (const Line& line : lines_of(text)) {
        if (const auto name = after("like", line.text)) {
            if (!own.empty()) throw TextMistake(line.number, "'like' must stand before the numbers");
            if (depth == deepest) throw TextMistake(line.number, "jobs are like each other in a circle");
            job = read(other(*name), beside(other, *name), depth + 1);
            continue;
        }
        if (const auto name = after("take", line.text)) {
            if (depth == deepest) throw TextMistake(line.number, "texts take each other in a circle");
            take(read(other(*name), beside(other, *name), depth + 1), line.number, job, own);
            continue;
        }
        if (const auto key = after("show", line.text)) {
            job.main_results.push_back(*key);
            continue;
        }
        if (const auto key = after("fails", line.text)) {
            job.failing.insert(*key);
            continue;
        }
        if (const auto keys = after("confirm", line.text)) {
            std::string rest = *keys;
            while (!rest.empty()) job.confirmed.insert(take_word(rest));
            continue;
        }
        if (const auto words = after("paste", line.text)) {
            std::string name = *words;
            const std::string key = take_word(name);
            if (name.empty()) throw TextMistake(line.number, "wanted: paste KEY TEXT");
            if (!own.insert(key).second) throw TextMistake(line.number, "the key " + key + " stands twice");
            job.rows[key].clear();
            for (const Line& pasted : lines_of(other(name)))
                job.rows[key].push_back(fields_of(pasted.text, ';'));
            continue;
        }
        const std::size_t sign = line.text.find_first_of("=:");
        if (sign == std::string::npos)
            throw TextMistake(line.number,
                              "wanted: KEY = VALUE, KEY : A ; B, paste KEY TEXT, confirm KEY, show KEY, "
                              "fails KEY, take TEXT or like JOB");
        const std::string key = trimmed(line.text.substr(0, sign));
        const std::string value = trimmed(line.text.substr(sign + 1));
        const bool first = own.insert(key).second;
        if (line.text[sign] == ':') {
            if (first) job.rows[key].clear();
            job.rows[key].push_back(fields_of(value, ';'));
        } else {
            if (!first) throw TextMistake(line.number, "the key " + key + " stands twice");
            job.values[key] = value;
        }
    }
    return job;
}

}  // namespace

JobText read_job(std::string_view text, const OtherJob& other) {
    return read(text, other, 0);
}

}  // namespace undercroft::sheets
