// Takes pictures of the program for the guide; needs a screen (sheets/pictures.sh brings one) and
// ImageMagick:
//   take_pictures EXTENSIONS FILE FOLDER NAME=SHEET!CELL[@PERCENT] [NAME=...]
// NAME=menu takes our menu, opened.
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

int take(int argc, char** argv) {
    if (argc < 5) {
        std::cerr << "usage: take_pictures EXTENSIONS FILE FOLDER NAME=SHEET!CELL[@PERCENT] ...\n";
        return 2;
    }
    const std::filesystem::path folder(argv[3]);
    const Office office(argv[1], Office::Screen::window);
    const Document document = office.open_copy(argv[2]);
    wait(3000);
    const Stage stage(office, document);
    stage.dispatch(".uno:Sidebar");
    for (int i = 4; i < argc; ++i) {
        const std::string scene = argv[i];
        const std::string name = scene.substr(0, scene.find('='));
        const std::string place = scene.substr(scene.find('=') + 1);
        if (place == "menu") {
            run("xdotool search --onlyvisible --name Calc windowfocus; xdotool key F10; sleep 0.5; xdotool "
                "key u; sleep 1");
        } else {
            if (place.starts_with("Audit!")) stage.dispatch("undercroft:audit");
            stage.show(place);
        }
        shoot(folder / (name + ".png"));
        if (place == "menu") run("xdotool key Escape Escape");
        std::cout << "  " << name << ".png\n";
    }
    return 0;
}

}  // namespace

}  // namespace undercroft::sheets

int main(int argc, char** argv) {
    return undercroft::sheets::run_tool([&] { return undercroft::sheets::take(argc, argv); });
}
