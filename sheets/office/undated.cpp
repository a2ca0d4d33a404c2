#include "sheets/office/undated.hpp"

#include <zip.h>

#include <com/sun/star/document/XDocumentPropertiesSupplier.hpp>
#include <com/sun/star/util/XModifiable.hpp>
#include <memory>
#include <stdexcept>

namespace undercroft::sheets {

namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

/// Of all parts of the file: the first day that the format knows.
void set_times(const std::filesystem::path& path) {
    constexpr zip_uint16_t midnight = 0;
    constexpr zip_uint16_t first_of_january_1980 = (1 << 5) | 1;
    int error = 0;
    std::unique_ptr<zip_t, decltype(&zip_discard)> file(zip_open(path.c_str(), 0, &error), &zip_discard);
    bool done = file != nullptr;
    const auto parts = static_cast<zip_uint64_t>(done ? zip_get_num_entries(file.get(), 0) : 0);
    for (zip_uint64_t part = 0; done && part < parts; ++part)
        done = zip_file_set_dostime(file.get(), part, midnight, first_of_january_1980, 0) == 0;
    done = done && zip_close(file.get()) == 0;
    if (!done) throw std::runtime_error("cannot save " + path.string() + "; the disk may be full");
    (void)file.release();  // closed
}

}  // namespace

void store_undated(const Document& document, const std::filesystem::path& path) {
    const Reference<css::document::XDocumentPropertiesSupplier> supplier(document.model(), UNO_QUERY_THROW);
    const Reference<css::document::XDocumentProperties> properties = supplier->getDocumentProperties();
    properties->setModificationDate({});
    properties->setEditingDuration(0);
    // Of what is not modified the office writes no date of its own.
    Reference<css::util::XModifiable>(document.model(), UNO_QUERY_THROW)->setModified(false);
    document.store(path);
    set_times(path);
}

}  // namespace undercroft::sheets
