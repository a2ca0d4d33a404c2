// Years of use: two versions of the extension at once, an update while a workbook is open, an office that is
// killed while the audit writes, a thousand documents. Profiles are private and thrown away.
#include <signal.h>  // NOLINT(modernize-deprecated-headers): kill() is of POSIX
#include <com/sun/star/deployment/ExtensionManager.hpp>
#include <com/sun/star/task/XInteractionApprove.hpp>
#include <com/sun/star/task/XInteractionHandler.hpp>
#include <com/sun/star/ucb/XCommandEnvironment.hpp>
#include <cppuhelper/implbase2.hxx>

#include <cstdlib>
#include <fstream>
#include <iostream>
#include <thread>

#include "tests/office/asked_audit.hpp"
#include "tests/office/desk.hpp"

namespace undercroft::tests {

using css::uno::Reference;
using css::uno::UNO_QUERY;
using sheets::Document;
using sheets::Office;
namespace fs = std::filesystem;

namespace {

std::string text_of(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {(std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>()};
}

/// The extension of this build as a package that calls itself another version.
fs::path package_of(const std::string& version) {
    const fs::path folder = scratch("package-" + version);
    fs::remove_all(folder);
    fs::copy(fs::path(EXTENSIONS_FOLDER) / "undercroft", folder, fs::copy_options::recursive);
    std::string description = text_of(folder / "description.xml");
    const std::size_t at = description.find("<version value=\"");
    REQUIRE(at != std::string::npos);
    const std::size_t start = at + 16;
    description.replace(start, description.find('"', start) - start, version);
    std::ofstream(folder / "description.xml") << description;
    const fs::path package = scratch("undercroft-" + version + ".oxt");
    const std::string packs =
        "cd '" + folder.string() + "' && cmake -E tar cf '" + package.string() + "' --format=zip .";
    REQUIRE(std::system(packs.c_str()) == 0);
    return package;
}

/// Says yes to each question of the extension manager, as the person who updates does.
class Agrees final
    : public cppu::WeakImplHelper2<css::ucb::XCommandEnvironment, css::task::XInteractionHandler> {
public:
    Reference<css::task::XInteractionHandler> SAL_CALL getInteractionHandler() override { return this; }
    Reference<css::ucb::XProgressHandler> SAL_CALL getProgressHandler() override { return {}; }
    void SAL_CALL handle(const Reference<css::task::XInteractionRequest>& request) override {
        for (const auto& answer : request->getContinuations())
            if (const Reference<css::task::XInteractionApprove> yes(answer, UNO_QUERY); yes.is())
                yes->select();
    }
};

/// \return what the extension manager has against it; empty for nothing
std::string install(const Office& office, const fs::path& package) {
    try {
        (void)css::deployment::ExtensionManager::get(office.context())
            ->addExtension(sheets::file_url(package), {}, "user", {}, new Agrees);
        return {};
    } catch (const css::uno::Exception& error) {
        return sheets::to_utf8(error.Message);
    }
}

/// Of the versions that are there: of the person's own, of all persons, of the installation; `-` for none.
std::vector<std::string> versions_in(const Office& office) {
    std::vector<std::string> versions;
    for (const auto& package :
         css::deployment::ExtensionManager::get(office.context())
             ->getExtensionsWithSameIdentifier("undercroft.addin", "undercroft.oxt", new Agrees))
        versions.push_back(package.is() ? sheets::to_utf8(package->getVersion()) : "-");
    return versions;
}

/// What a function of ours gives on a new sheet.
double computed(const Office& office) {
    const Document document = office.blank();
    const auto cell = document.cell(document.sheet_names().front(), "A1");
    cell->setFormula(sheets::to_ustring("=UC.CONVERT(\"1 m\";\"mm\")"));
    return cell->getValue();
}

fs::path no_extensions() {
    fs::create_directories(scratch("no-extensions"));
    return scratch("no-extensions");
}

}  // namespace

TEST_CASE("of two versions installed at once one computes, and sheets hold what they held", "[people]") {
    const fs::path profile = scratch("two-versions");
    const std::string own = "99.0.1";
    {
        const Office office(EXTENSIONS_FOLDER, {}, Office::Screen::none, profile);
        // A running office that has the other one loaded complains, and has the new one from its next start.
        std::cout << "  a second version beside that of the machine, the office says: "
                  << install(office, package_of(own)) << "\n";
    }
    const Office office(EXTENSIONS_FOLDER, {}, Office::Screen::none, profile);
    const std::vector<std::string> versions = versions_in(office);
    REQUIRE(versions.size() == 3);
    CHECK(versions[0] == own);
    CHECK(versions[1] == "-");
    CHECK(versions[2] != own);
    CHECK(versions[2] != "-");
    CHECK(computed(office) == 1000);
    const Document job = office.open_copy(filled_job);
    CHECK_THAT(asked_audit(office, job, filled_job), Catch::Contains("Nothing was found"));
}

TEST_CASE("an update while a workbook is open leaves the workbook whole, and is there after a new start",
          "[people]") {
    const fs::path profile = scratch("updated");
    const fs::path file = scratch("open-meanwhile.ods");
    fs::copy_file(filled_job, file, fs::copy_options::overwrite_existing);
    {
        const Office office(no_extensions(), {}, Office::Screen::none, profile);
        CHECK(install(office, package_of("0.0.1")).empty());
    }
    double before = 0;
    {
        const Office office(no_extensions(), {}, Office::Screen::none, profile);
        CHECK(versions_in(office).front() == "0.0.1");
        const Document job = office.open(file);
        before = job.named("storage_provided")->getValue();
        CHECK(before > 0);
        CHECK(install(office, package_of("99.0.2")).empty());
        CHECK(job.named("storage_provided")->getValue() == before);
        job.recalculate();
        const double computed_meanwhile = job.named("storage_provided")->getValue();
        const int error_meanwhile = job.named("storage_provided")->getError();
        std::cout << "  updated while open: " << computed_meanwhile << ", error " << error_meanwhile << "\n";
        CHECK((error_meanwhile != 0 || computed_meanwhile == before));  // never another number
        job.store(file);
    }
    const Office office(no_extensions(), {}, Office::Screen::none, profile);
    CHECK(versions_in(office).front() == "99.0.2");
    const Document job = office.open(file);
    job.recalculate();
    CHECK(job.named("storage_provided")->getValue() == before);
    job.store(file);  // the file before this one holds the errors of the meantime
    CHECK_THAT(asked_audit(office, job, file), Catch::Contains("Nothing was found"));
}

TEST_CASE("an office that is killed while the audit writes leaves the file as it was, and starts again",
          "[people]") {
    const fs::path profile = scratch("killed-profile");
    const fs::path file = scratch("killed-audit.ods");
    fs::copy_file(filled_job, file, fs::copy_options::overwrite_existing);
    const std::string before = text_of(file);
    int finished = 0;
    for (const int milliseconds : {200, 1500, 3000}) {
        CAPTURE(milliseconds);
        const Office office(EXTENSIONS_FOLDER, {}, Office::Screen::none, profile);
        const Document document = office.open(file);
        std::thread killer([milliseconds, group = office.process()] {
            std::this_thread::sleep_for(std::chrono::milliseconds(milliseconds));
            kill(-group, SIGKILL);
        });
        try {
            (void)asked_audit(office, document, file, true);
            ++finished;
        } catch (const css::uno::Exception&) {  // it is dead
        } catch (const std::runtime_error&) {   // before it was asked
        }
        killer.join();
        CHECK(office.why_it_ended() == "the office broke down");
        CHECK(text_of(file) == before);
    }
    CHECK(finished < 3);
    // The lock beside the file is the same person's.
    const Office office(EXTENSIONS_FOLDER, {}, Office::Screen::none, profile);
    const Document document = office.open(file);
    CHECK(document.sheet_names().back() != "Audit");
    CHECK_THAT(asked_audit(office, document, file, true), Catch::Contains("Nothing was found"));
    document.store(file);
    CHECK(office.open_copy(file).sheet_names().size() == document.sheet_names().size());
}

namespace {

/// What an office grows by, in MiB, while a workbook is opened, computed and closed so many times; the first
/// times, in which the office fills what it keeps, are not counted.
double grown_by_opening(const Office& office, const fs::path& file, int times) {
    const auto open_and_close = [&](int count) {
        for (int i = 0; i < count; ++i) {
            const Document document = office.open(file);
            document.recalculate();
            REQUIRE(document.cell(document.sheet_names().front(), "C1")->getValue() == 0.305);
        }
        return memory_of(office);
    };
    const double early = open_and_close(times / 10);
    const double late = open_and_close(times);
    std::cout << "  opened and closed: " << early << " MiB after " << times / 10 << ", " << late
              << " MiB after " << times + times / 10 << "\n";
    return late - early;
}

fs::path small_workbook(const std::string& name, const char* convert, const char* why) {
    const fs::path file = scratch(name);
    Desk desk;
    desk.put("A1", 305).put("B1", "mm").put("C1", convert).put("D1", why);
    desk.document().store(file);
    return file;
}

}  // namespace

TEST_CASE("a thousand documents opened and closed leave no more in the memory than plain ones do",
          "[.long]") {
    const fs::path ours = small_workbook("ours.ods", "=UC.CONVERT(A1:B1;\"m\")", "=UC.WHY(C1)");
    const fs::path plain = small_workbook("plain.ods", "=A1/1000", "=\"C1 = \"&C1");
    const int times = std::getenv("UNDERCROFT_DOCUMENTS") != nullptr
                          ? std::atoi(std::getenv("UNDERCROFT_DOCUMENTS"))
                          : 1000;
    const double by_plain = grown_by_opening(Office(no_extensions()), plain, times);
    const double by_ours = grown_by_opening(Office(EXTENSIONS_FOLDER), ours, times);
    CHECK(by_ours < by_plain + 10);
}

}  // namespace undercroft::tests
