#include "addin/uno/read_stored.hpp"

#include <com/sun/star/packages/zip/ZipFileAccess.hpp>
#include <com/sun/star/ucb/SimpleFileAccess.hpp>
#include <com/sun/star/xml/sax/InputSource.hpp>
#include <com/sun/star/xml/sax/Parser.hpp>
#include <com/sun/star/xml/sax/XDocumentHandler.hpp>
#include <cppuhelper/implbase1.hxx>

namespace undercroft::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

class SaxAttributes final : public audit::Attributes {
public:
    explicit SaxAttributes(const Reference<css::xml::sax::XAttributeList>& list) : list_(list) {}
    [[nodiscard]] std::string get(std::string_view name) const override {
        return to_string(list_->getValueByName(to_oustring(name)));
    }

private:
    const Reference<css::xml::sax::XAttributeList>& list_;
};

class Handler final : public cppu::WeakImplHelper1<css::xml::sax::XDocumentHandler> {
public:
    explicit Handler(audit::StoredValues& values) : reader_(values) {}

    void SAL_CALL startDocument() override {}
    void SAL_CALL endDocument() override {}
    void SAL_CALL startElement(const rtl::OUString& name,
                               const Reference<css::xml::sax::XAttributeList>& attributes) override {
        reader_.start(to_string(name), SaxAttributes(attributes));
    }
    void SAL_CALL endElement(const rtl::OUString& name) override { reader_.end(to_string(name)); }
    void SAL_CALL characters(const rtl::OUString& text) override {
        if (reader_.wants_text()) reader_.text(to_string(text));
    }
    void SAL_CALL ignorableWhitespace(const rtl::OUString&) override {}
    void SAL_CALL processingInstruction(const rtl::OUString&, const rtl::OUString&) override {}
    void SAL_CALL setDocumentLocator(const Reference<css::xml::sax::XLocator>&) override {}

private:
    audit::StoredReader reader_;
};

}  // namespace

audit::StoredValues read_stored(const Reference<css::uno::XComponentContext>& context,
                                const rtl::OUString& url) {
    css::xml::sax::InputSource source;
    source.sSystemId = url;
    Reference<css::packages::zip::XZipFileAccess2> file;  // its streams end with it
    if (url.endsWithIgnoreAsciiCase(".fods")) {
        source.aInputStream = css::ucb::SimpleFileAccess::create(context)->openFileRead(url);
    } else {
        file = css::packages::zip::ZipFileAccess::createWithURL(context, url);
        source.aInputStream.set(file->getByName("content.xml"), UNO_QUERY_THROW);
    }
    audit::StoredValues values;
    const Reference<css::xml::sax::XParser> parser = css::xml::sax::Parser::create(context);
    parser->setDocumentHandler(new Handler(values));
    parser->parseStream(source);
    return values;
}

}  // namespace undercroft::addin
