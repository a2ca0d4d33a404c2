#include "addin/uno/read_file.hpp"

#include <com/sun/star/packages/zip/ZipFileAccess.hpp>
#include <com/sun/star/ucb/SimpleFileAccess.hpp>
#include <com/sun/star/xml/sax/InputSource.hpp>
#include <com/sun/star/xml/sax/Parser.hpp>
#include <com/sun/star/xml/sax/XDocumentHandler.hpp>
#include <cppuhelper/implbase1.hxx>

#include <functional>
#include <memory>

#include "addin/audit/book/xlsx_values.hpp"
#include "addin/uno/prefixes.hpp"

namespace undercroft::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

using Stream = Reference<css::io::XInputStream>;
using List = Reference<css::xml::sax::XAttributeList>;

class SaxAttributes final : public audit::Attributes {
public:
    SaxAttributes(const List& list, const Prefixes& prefixes) : list_(list), prefixes_(prefixes) {}
    [[nodiscard]] std::string get(std::string_view name) const override {
        if (prefixes_.are_usual()) return to_string(list_->getValueByName(to_oustring(name)));
        for (sal_Int16 i = 0; i < list_->getLength(); ++i)
            if (prefixes_.attribute(list_->getNameByIndex(i)) == name)
                return to_string(list_->getValueByIndex(i));
        return {};
    }
    [[nodiscard]] audit::XmlAttributes all() const {
        audit::XmlAttributes all;
        for (sal_Int16 i = 0; i < list_->getLength(); ++i)
            all.emplace_back(prefixes_.attribute(list_->getNameByIndex(i)),
                             to_string(list_->getValueByIndex(i)));
        return all;
    }
    [[nodiscard]] bool start_script() const {
        for (sal_Int16 i = 0; i < list_->getLength(); ++i)
            if (list_->getValueByIndex(i).indexOf(':') > 0 &&
                audit::FileRisks::starts_script(to_string(list_->getValueByIndex(i))))
                return true;
        return false;
    }

private:
    const List& list_;
    const Prefixes& prefixes_;
};

/// Who listens to the events of a parser.
struct Listener {
    std::function<void(const std::string&, const SaxAttributes&)> start;
    std::function<void(const std::string&)> text = [](const std::string&) {};
    std::function<void(const std::string&)> end = [](const std::string&) {};
    std::function<bool()> wants_text = [] { return false; };
};

class Handler final : public cppu::WeakImplHelper1<css::xml::sax::XDocumentHandler> {
public:
    explicit Handler(Listener listener) : listener_(std::move(listener)) {}

    void SAL_CALL startDocument() override {}
    void SAL_CALL endDocument() override {}
    void SAL_CALL startElement(const rtl::OUString& name, const List& attributes) override {
        prefixes_.begin(attributes);
        listener_.start(prefixes_.element(name), SaxAttributes(attributes, prefixes_));
    }
    void SAL_CALL endElement(const rtl::OUString& name) override {
        listener_.end(prefixes_.element(name));
        prefixes_.end();
    }
    void SAL_CALL characters(const rtl::OUString& text) override {
        if (listener_.wants_text()) listener_.text(to_string(text));
    }
    void SAL_CALL ignorableWhitespace(const rtl::OUString&) override {}
    void SAL_CALL processingInstruction(const rtl::OUString&, const rtl::OUString&) override {}
    void SAL_CALL setDocumentLocator(const Reference<css::xml::sax::XLocator>&) override {}

private:
    Listener listener_;
    Prefixes prefixes_;
};

class FileReader {
public:
    FileReader(const Reference<css::uno::XComponentContext>& context, const rtl::OUString& url)
        : context_(context), url_(url) {}

    FileContents read() {
        const Reference<css::ucb::XSimpleFileAccess> files(css::ucb::SimpleFileAccess::create(context_),
                                                           UNO_QUERY_THROW);
        css::uno::Sequence<sal_Int8> first;
        const Stream stream = files->openFileRead(url_);
        constexpr sal_Int32 enough = 8;
        stream->readBytes(first, enough);
        stream->closeInput();
        const std::string magic(reinterpret_cast<const char*>(first.getConstArray()),
                                static_cast<std::size_t>(first.getLength()));
        if (magic.starts_with("PK"))
            read_package();
        else if (magic.find('<') != std::string::npos)
            parse("", files->openFileRead(url_), open_document(""));
        else
            made_.not_read = "a file of this kind does not show its results without being opened";
        if (made_.not_read.empty() && !knows_kind_)
            made_.not_read = "it is neither an OpenDocument nor an Office Open XML workbook";
        return std::move(made_);
    }

private:
    void read_package() {
        package_ = css::packages::zip::ZipFileAccess::createWithURL(context_, url_);
        std::vector<std::string> names;
        for (const rtl::OUString& name : package_->getElementNames()) names.push_back(to_string(name));
        made_.risks.take_parts(names);
        for (const std::string& name : names)
            if (is_scanned(name))
                parse(name, part(name), name == "content.xml" ? open_document(name) : risks_of(name));
        if (package_->hasByName("xl/workbook.xml")) read_xlsx();
    }

    /// Parts that may link, bind or start something; `content.xml` of embedded objects too.
    static bool is_scanned(const std::string& name) {
        const std::string last = name.substr(name.rfind('/') + 1);
        return last == "content.xml" || last == "styles.xml" || last == "meta.xml" ||
               name.ends_with(".rels") || (name.starts_with("Configurations2/") && name.ends_with(".xml"));
    }

    void read_xlsx() {
        knows_kind_ = true;
        audit::XlsxSheets sheets;
        Listener listener;
        listener.start = [&](const std::string& element, const SaxAttributes& attributes) {
            sheets.take_element(element, attributes);
        };
        for (const char* name : {"xl/workbook.xml", "xl/_rels/workbook.xml.rels"})
            if (package_->hasByName(to_oustring(name))) parse(name, part(name), listener);
        for (const auto& [sheet, name] : sheets.parts()) {
            if (!package_->hasByName(to_oustring(name))) continue;
            audit::XlsxReader reader(made_.stored, sheet);
            Listener cells;
            cells.start = [&](const std::string& element, const SaxAttributes& attributes) {
                reader.start(element, attributes);
            };
            cells.text = [&](const std::string& text) { reader.text(text); };
            cells.end = [&](const std::string& element) { reader.end(element); };
            cells.wants_text = [&] { return reader.wants_text(); };
            parse(name, part(name), cells);
        }
    }

    void look_at(const std::string& name, const std::string& element, const SaxAttributes& attributes) {
        if (audit::FileRisks::matters(element) || attributes.start_script())
            made_.risks.take_element(name, element, attributes.all());
    }

    Listener risks_of(const std::string& name) {
        Listener listener;
        listener.start = [this, name](const std::string& element, const SaxAttributes& attributes) {
            look_at(name, element, attributes);
        };
        return listener;
    }

    Listener open_document(const std::string& name) {
        const auto reader = std::make_shared<audit::StoredReader>(made_.stored);
        Listener listener;
        listener.start = [this, name, reader](const std::string& element, const SaxAttributes& attributes) {
            if (element == "office:spreadsheet") knows_kind_ = true;
            reader->start(element, attributes);
            look_at(name, element, attributes);
        };
        listener.text = [reader](const std::string& text) { reader->text(text); };
        listener.end = [reader](const std::string& element) { reader->end(element); };
        listener.wants_text = [reader] { return reader->wants_text(); };
        return listener;
    }

    [[nodiscard]] Stream part(const std::string& name) const {
        return Stream(package_->getByName(to_oustring(name)), UNO_QUERY_THROW);
    }

    void parse(const std::string& name, const Stream& stream, Listener listener) const {
        css::xml::sax::InputSource source;
        source.sSystemId = url_ + (name.empty() ? rtl::OUString() : "/" + to_oustring(name));
        source.aInputStream = stream;
        const Reference<css::xml::sax::XParser> parser = css::xml::sax::Parser::create(context_);
        parser->setDocumentHandler(new Handler(std::move(listener)));
        parser->parseStream(source);
    }

    Reference<css::uno::XComponentContext> context_;
    rtl::OUString url_;
    Reference<css::packages::zip::XZipFileAccess2> package_;  // its streams end with it
    FileContents made_;
    bool knows_kind_ = false;
};

}  // namespace

FileContents read_file(const Reference<css::uno::XComponentContext>& context, const rtl::OUString& url) {
    return FileReader(context, url).read();
}

}  // namespace undercroft::addin
