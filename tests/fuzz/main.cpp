// libFuzzer's entry; UNDERCROFT_TARGET is one of the functions of targets.hpp.
#include <cstdint>

#include "tests/fuzz/targets.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    undercroft::fuzz::UNDERCROFT_TARGET(std::string_view(reinterpret_cast<const char*>(data), size));
    return 0;
}
