// Reads tags the way an XML parser hands them over: every element that starts ends, in order.
#include "addin/audit/book/stored_values.hpp"

#include <map>

#include "tests/fuzz/targets.hpp"

namespace undercroft::fuzz {

namespace {

class TagAttributes final : public audit::Attributes {
public:
    std::map<std::string, std::string, std::less<>> values;
    [[nodiscard]] std::string get(std::string_view name) const override {
        const auto found = values.find(name);
        return found == values.end() ? std::string() : found->second;
    }
};

/// `name a="x" b="y"` between the brackets.
std::string read_tag(std::string_view tag, TagAttributes& attributes) {
    const std::size_t name_end = std::min(tag.find_first_of(" \n\t/"), tag.size());
    std::string name(tag.substr(0, name_end));
    for (std::size_t at = name_end; at < tag.size();) {
        const std::size_t start = tag.find_first_not_of(" \n\t", at);
        const std::size_t equals = tag.find("=\"", at);
        if (start == std::string_view::npos || equals == std::string_view::npos || start > equals) break;
        const std::size_t close = std::min(tag.find('"', equals + 2), tag.size());
        attributes.values.emplace(tag.substr(start, equals - start),
                                  tag.substr(equals + 2, close - equals - 2));
        at = close + 1;
    }
    return name;
}

}  // namespace

void stored_values(std::string_view bytes) {
    audit::StoredValues values;
    audit::StoredReader reader(values);
    std::vector<std::string> open;
    const auto end_one = [&] {
        reader.end(open.back());
        open.pop_back();
    };
    while (!bytes.empty()) {
        const std::size_t bracket = std::min(bytes.find('<'), bytes.size());
        if (bracket > 0 && reader.wants_text()) reader.text(bytes.substr(0, bracket));
        bytes.remove_prefix(bracket);
        if (bytes.empty()) break;
        const std::size_t close = std::min(bytes.find('>'), bytes.size());
        const std::string_view tag = bytes.substr(1, close - 1);
        bytes.remove_prefix(std::min(close + 1, bytes.size()));
        if (tag.starts_with("/")) {
            if (!open.empty()) end_one();
            continue;
        }
        if (tag.starts_with("?") || tag.starts_with("!")) continue;
        TagAttributes attributes;
        open.push_back(read_tag(tag, attributes));
        reader.start(open.back(), attributes);
        if (tag.ends_with("/")) end_one();
    }
    while (!open.empty()) end_one();
    // No tag can name a sheet so; the fuzzer finds every other name.
    promise(values.find("\"", 0, 0) == nullptr, "a value on a sheet that is not there");
    promise(values.size() < 1000000, "more values than the file can hold");
}

}  // namespace undercroft::fuzz
