// Takes pictures of the program for the guide; needs a screen (sheets/pictures.sh brings one) and
// ImageMagick.
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/frame/DispatchHelper.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <com/sun/star/view/XSelectionSupplier.hpp>

#include <chrono>
#include <cstdlib>
#include <iostream>
#include <thread>

#include "sheets/office/tool.hpp"

namespace undercroft::sheets {

namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

void wait(int milliseconds) {
    std::this_thread::sleep_for(std::chrono::milliseconds(milliseconds));
}

void run(const std::string& command) {
    if (std::system(command.c_str()) != 0) throw std::runtime_error("this did not work: " + command);
}

void shoot(const std::filesystem::path& picture) {
    run("import -window root +dither -colors 32 -strip -define png:compression-level=9 PNG8:" +
        picture.string());
}

class Stage {
public:
    explicit Stage(const Office& office, const Document& document)
        : office_(office),
          document_(document),
          controller_(
              Reference<css::frame::XModel>(document.model(), UNO_QUERY_THROW)->getCurrentController()) {}

    void dispatch(const std::string& url) const {
        css::frame::DispatchHelper::create(office_.context())
            ->executeDispatch(
                Reference<css::frame::XDispatchProvider>(controller_->getFrame(), UNO_QUERY_THROW),
                to_ustring(url), {}, 0, {});
    }

    /// `SHEET!CELL@PERCENT`
    void show(const std::string& scene) const {
        const std::size_t mark = scene.find('!');
        const std::size_t at = std::min(scene.find('@'), scene.size());
        const std::string sheet = scene.substr(0, mark);
        const std::string cell = scene.substr(mark + 1, at - mark - 1);
        const Reference<css::beans::XPropertySet> look(controller_, UNO_QUERY_THROW);
        const int percent = at < scene.size() ? std::stoi(scene.substr(at + 1)) : 100;
        const Reference<css::sheet::XSpreadsheetView> view(controller_, UNO_QUERY_THROW);
        view->setActiveSheet(document_.sheet(sheet));
        look->setPropertyValue("ZoomType", Any(sal_Int16(3)));  // by value
        look->setPropertyValue("ZoomValue", Any(static_cast<sal_Int16>(percent)));
        const Reference<css::view::XSelectionSupplier> selection(controller_, UNO_QUERY_THROW);
        // From below, so that the cell comes to stand high in the window.
        selection->select(Any(document_.sheet(sheet)->getCellRangeByName(to_ustring("A1900"))));
        wait(300);
        selection->select(Any(document_.sheet(sheet)->getCellRangeByName(to_ustring(cell))));
        wait(1500);
    }

private:
    const Office& office_;
    const Document& document_;
    Reference<css::frame::XController> controller_;
};

struct Wanted {
    std::filesystem::path extensions;
    Limits limits;
    std::filesystem::path file;
    std::filesystem::path folder;
    std::vector<std::string> scenes;
};

int take(const Wanted& wanted) {
    const Office office(wanted.extensions, wanted.limits, Office::Screen::window);
    const Document document = office.open_copy(wanted.file);
    wait(3000);
    const Stage stage(office, document);
    stage.dispatch(".uno:Sidebar");
    for (const std::string& scene : wanted.scenes) {
        const std::string name = scene.substr(0, scene.find('='));
        const std::string place = scene.substr(scene.find('=') + 1);
        if (place == "menu") {
            run("xdotool search --onlyvisible --name Calc windowfocus; xdotool key F10; sleep 0.5; xdotool "
                "key u; sleep 1");
        } else {
            if (place.starts_with("Audit!")) stage.dispatch("undercroft:audit");
            stage.show(place);
        }
        shoot(wanted.folder / (name + ".png"));
        if (place == "menu") run("xdotool key Escape Escape");
        std::cout << "  " << name << ".png\n";
    }
    return 0;
}

}  // namespace

}  // namespace undercroft::sheets

int main(int argc, char** argv) {
    using namespace undercroft;
    using namespace undercroft::sheets;
    CommandLine line("Takes pictures of the program for the guide, on the screen that DISPLAY names.",
                     "take_pictures");
    Wanted wanted;
    add_office(line, wanted.extensions, wanted.limits);
    line.add_required("FILE", wanted.file, "the workbook", Existing::file);
    line.add_required("FOLDER", wanted.folder, "where the pictures go", Existing::folder);
    line.add_required(
        "SCENE", wanted.scenes, "NAME=SHEET!CELL or NAME=SHEET!CELL@PERCENT; NAME=menu is our menu, opened",
        [](const std::string& scene) {
            const bool good = scene.find('=') != std::string::npos &&
                              (scene.ends_with("=menu") || scene.find('!') != std::string::npos);
            return good ? std::string() : "'" + scene + "' is no NAME=SHEET!CELL";
        });
    return run_tool(line, argc, argv, [&] { return take(wanted); });
}
