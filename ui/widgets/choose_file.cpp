// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/choose_file.hpp"

#include <QAbstractFileIconProvider>
#include <QFileDialog>
#include <QFileInfo>
#include <QToolButton>
#include <QTreeView>

#include "ui/theme/icons.hpp"
#include "ui/theme/theme.hpp"

namespace arc::ui {

namespace {

class BlindIconProvider final : public QAbstractFileIconProvider {
  public:
    [[nodiscard]] QIcon icon(IconType type) const override {
        const bool folder = type == Folder || type == Drive || type == Computer || type == Desktop;
        return ui::icon(folder ? QStringLiteral("folder") : QStringLiteral("table"),
                        currentTheme().colour(Role::Accent));
    }
    [[nodiscard]] QIcon icon(const QFileInfo& info) const override {
        return icon(info.isDir() ? Folder : File);
    }
    [[nodiscard]] QString type(const QFileInfo& info) const override {
        return info.isDir() ? QFileDialog::tr("Folder") : info.suffix();
    }
};

QFileDialog* dialog(QWidget* parent, const QString& title) {
    static BlindIconProvider provider;
    auto* made = new QFileDialog(parent, title);
    made->setAttribute(Qt::WA_DeleteOnClose);
    made->setOption(QFileDialog::DontUseNativeDialog);
    made->setOption(QFileDialog::DontUseCustomDirectoryIcons);
    made->setIconProvider(&provider);
    // Qt's names of the buttons in the dialog, and our pictures for them.
    for (const auto& [name, picture] :
         std::initializer_list<std::pair<const char*, const char*>>{{"backButton", "back"},
                                                                    {"forwardButton", "forward"},
                                                                    {"toParentButton", "up"},
                                                                    {"newFolderButton", "add"}})
        if (auto* one = made->findChild<QToolButton*>(QString::fromLatin1(name)))
            one->setIcon(icon(QString::fromLatin1(picture), currentTheme().colour(Role::Accent)));
    for (const char* name : {"listModeButton", "detailModeButton"})
        if (auto* one = made->findChild<QToolButton*>(QString::fromLatin1(name))) one->hide();
    // Qt gives size and day too little room to be read.
    if (auto* list = made->findChild<QTreeView*>(QStringLiteral("treeView"))) {
        constexpr int widths[] = {250, 100, 80, 200};
        for (int column = 0; column < 4; ++column)
            list->setColumnWidth(column, currentTheme().px(widths[column]));
    }
    made->resize(currentTheme().px(860), currentTheme().px(560));
    return made;
}

}  // namespace

QFileDialog* chooseFiles(QWidget* parent, const QString& title, const QStringList& nameFilters,
                         std::function<void(const QStringList&)> chosen) {
    auto* made = dialog(parent, title);
    made->setFileMode(QFileDialog::ExistingFiles);
    made->setNameFilters(nameFilters);
    QObject::connect(made, &QFileDialog::filesSelected, parent,
                     [chosen = std::move(chosen)](const QStringList& files) { chosen(files); });
    made->open();
    return made;
}

QFileDialog* chooseFolder(QWidget* parent, const QString& title, const QString& start,
                          std::function<void(const QString&)> chosen) {
    auto* made = dialog(parent, title);
    made->setFileMode(QFileDialog::Directory);
    made->setOption(QFileDialog::ShowDirsOnly);
    if (!start.isEmpty()) made->setDirectory(start);
    QObject::connect(made, &QFileDialog::fileSelected, parent,
                     [chosen = std::move(chosen)](const QString& folder) { chosen(folder); });
    made->open();
    return made;
}

}  // namespace arc::ui
