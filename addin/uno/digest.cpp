#include "addin/uno/digest.hpp"

#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/uno/RuntimeException.hpp>
#include <com/sun/star/xml/crypto/DigestID.hpp>
#include <com/sun/star/xml/crypto/NSSInitializer.hpp>

#include <algorithm>

#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

audit::Digest office_digest(const css::uno::Reference<css::uno::XComponentContext>& context) {
    const auto library = css::xml::crypto::NSSInitializer::create(context);
    return [library](std::string_view text) {
        const auto digest = library->getDigestContext(css::xml::crypto::DigestID::SHA256, {});
        if (!digest.is()) throw css::uno::RuntimeException("the office has no SHA-256");
        constexpr std::size_t most = 1U << 20U;
        for (std::size_t at = 0; at < text.size(); at += most) {
            const std::string_view part = text.substr(at, most);
            digest->updateDigest(
                {reinterpret_cast<const sal_Int8*>(part.data()), static_cast<sal_Int32>(part.size())});
        }
        std::string hexadecimal;
        for (const sal_Int8 byte : digest->finalizeDigestAndDispose()) {
            static constexpr char digits[] = "0123456789abcdef";
            hexadecimal += digits[(static_cast<std::uint8_t>(byte) >> 4U) & 15U];
            hexadecimal += digits[static_cast<std::uint8_t>(byte) & 15U];
        }
        return hexadecimal;
    };
}

}  // namespace undercroft::addin
