#!/usr/bin/env python3
"""Writes the order files beside it with programs that share no code with the readers under test.

Debian: apt-get install python3-openpyxl python3-xlwt python3-odf; then: /usr/bin/python3 make.py
The build doesn't run this: the files are checked in. All names and orders are invented.
"""
import datetime
import os

import openpyxl
import xlwt
from odf import dc, office, table, text
from odf.opendocument import OpenDocumentSpreadsheet
from odf.style import Style, TableProperties

HEADER = ["Order", "SKU", "Design", "Quantity", "Order Date", "Text: Name", "Buyer"]
DAY = datetime.date(2026, 3, 2)
# Rows 4 to 7 of each file: order, sku, design, quantity, day, name, buyer. Row 5 and 6 belong to one merged order cell.
ROWS = [
    [1000123, "MUG-11-W", "heron", 1, DAY, "Ada", "Wilhelmina Tern"],
    ["Q1044", "MUG-11-W", "storm-lamp", 2, DAY, "Zoë & Ben", "Osric Sandhopper"],
    [None, "MUG-15-W", "storm-lamp", 1, DAY, "two\nlines", "Osric Sandhopper"],
    ["00042", "MUG-11-W", "tide-table", 3, DAY, "  spaced", "Quillmoor Choir"],
]


def xlsx(name, epoch=None):
    book = openpyxl.Workbook()
    if epoch:
        book.epoch = epoch
    sheet = book.active
    sheet.title = "Orders"
    sheet["A1"] = "Weekend of the lighthouse"
    sheet.merge_cells("A1:G1")
    for column, head in enumerate(HEADER, 1):
        sheet.cell(3, column, head)
    for number, row in enumerate(ROWS, 4):
        for column, value in enumerate(row, 1):
            sheet.cell(number, column, value)
    sheet.merge_cells("A5:A6")
    sheet.row_dimensions[7].hidden = True
    sheet.column_dimensions["G"].hidden = True
    sheet["C8"] = "Total"
    sheet["D8"] = 7
    book.create_sheet("Old").sheet_state = "hidden"
    book.create_sheet("Older").sheet_state = "veryHidden"
    book.save(name)


def xls(name, from_1904=False):
    book = xlwt.Workbook()
    book.dates_1904 = from_1904
    sheet = book.add_sheet("Orders")
    sheet.write_merge(0, 0, 0, 6, "Weekend of the lighthouse")
    for column, head in enumerate(HEADER):
        sheet.write(2, column, head)
    date = xlwt.easyxf(num_format_str="dd/mm/yyyy")
    for number, row in enumerate(ROWS, 3):
        for column, value in enumerate(row):
            if number in (4, 5) and column == 0:
                continue
            if isinstance(value, datetime.date):
                sheet.write(number, column, value, date)
            else:
                sheet.write(number, column, value)
    sheet.write_merge(4, 5, 0, 0, ROWS[1][0])
    sheet.row(6).hidden = True
    sheet.col(6).hidden = True
    sheet.write(7, 2, "Total")
    sheet.write(7, 3, 7)
    sheet.write(7, 4, xlwt.Formula("1/0"))
    values = book.add_sheet("Values")
    values.write(0, 0, 123, xlwt.easyxf(num_format_str="00000"))
    values.write(0, 1, 0.25, xlwt.easyxf(num_format_str="0%"))
    values.write(0, 2, 114736829102938475)
    values.write(0, 3, "114736829102938475")
    values.write(0, 4, True)
    values.write(0, 5, 60, date)
    values.write(0, 6, 2.5)
    values.write_rich_text(0, 7, ["storm ", ("lamp", xlwt.easyfont("bold true"))])
    values.row(0).set_cell_error(8, 0x2A)
    for name_, how in (("Old", 1), ("Older", 2)):
        book.add_sheet(name_).visibility = how
    book.save(name)


def ods_cell(value, **more):
    if value is None:
        return table.TableCell(**more)
    if isinstance(value, (int, float)):
        cell = table.TableCell(valuetype="float", value=value, **more)
        cell.addElement(text.P(text=str(value)))
        return cell
    if isinstance(value, datetime.date):
        cell = table.TableCell(valuetype="date", datevalue=value.isoformat(), **more)
        cell.addElement(text.P(text=value.strftime("%d/%m/%y")))
        return cell
    cell = table.TableCell(valuetype="string", **more)
    for line in value.split("\n"):
        paragraph = text.P()
        bare = line.lstrip(" ")
        if len(line) > len(bare):
            paragraph.addElement(text.S(c=len(line) - len(bare)))
        paragraph.addText(bare)
        cell.addElement(paragraph)
    return cell


def ods_row(values, **more):
    row = table.TableRow(**more)
    for value in values:
        row.addElement(value if not isinstance(value, (str, int, float, datetime.date, type(None))) else ods_cell(value))
    return row


def ods(name):
    book = OpenDocumentSpreadsheet()
    hidden = Style(name="hid", family="table")
    hidden.addElement(TableProperties(display="false"))
    book.automaticstyles.addElement(hidden)
    sheet = table.Table(name="Orders")
    sheet.addElement(table.TableColumn(numbercolumnsrepeated=6))
    sheet.addElement(table.TableColumn(visibility="collapse"))
    sheet.addElement(ods_row([ods_cell("Weekend of the lighthouse", numbercolumnsspanned=7),
                              table.CoveredTableCell(numbercolumnsrepeated=6)]))
    sheet.addElement(table.TableRow())
    heads = table.TableHeaderRows()
    heads.addElement(ods_row(HEADER))
    sheet.addElement(heads)
    sheet.addElement(ods_row(ROWS[0]))
    sheet.addElement(ods_row([ods_cell(ROWS[1][0], numberrowsspanned=2)] + ROWS[1][1:]))
    sheet.addElement(ods_row([table.CoveredTableCell()] + ROWS[2][1:]))
    noted = ods_cell("Quillmoor Choir")
    note = office.Annotation()
    note.addElement(dc.Date(text="2026-03-01T10:00:00"))
    note.addElement(text.P(text="sing louder"))
    noted.addElement(note)
    sheet.addElement(ods_row(ROWS[3][:6] + [noted], visibility="filter"))
    sheet.addElement(ods_row([None, None, "Total", 7]))
    tail = table.TableRow(numberrowsrepeated=1048568)
    tail.addElement(table.TableCell(numbercolumnsrepeated=16384))
    sheet.addElement(tail)
    book.spreadsheet.addElement(sheet)
    values = table.Table(name="Values")
    padded = table.TableCell(valuetype="float", value=123)
    padded.addElement(text.P(text="00123"))
    parted = table.TableCell(valuetype="float", value=1234567)
    parted.addElement(text.P(text="1,234,567"))
    rounded = table.TableCell(valuetype="float", value=1234567890123)
    rounded.addElement(text.P(text="1.23457E+12"))
    percent = table.TableCell(valuetype="percentage", value=0.25)
    percent.addElement(text.P(text="25%"))
    money = table.TableCell(valuetype="currency", currency="USD", value=12.5)
    money.addElement(text.P(text="$12.50"))
    truth = table.TableCell(valuetype="boolean", booleanvalue="true")
    truth.addElement(text.P(text="TRUE"))
    clock = table.TableCell(valuetype="time", timevalue="PT10H30M00S")
    clock.addElement(text.P(text="10:30"))
    moment = table.TableCell(valuetype="date", datevalue="2026-03-02T18:00:00")
    moment.addElement(text.P(text="02/03/26 18:00"))
    formula = table.TableCell(valuetype="float", value=6, formula="of:=2*3")
    formula.addElement(text.P(text="6"))
    failed = table.TableCell(valuetype="string", stringvalue="", formula="of:=1/0")
    failed.addElement(text.P(text="#DIV/0!"))
    long = table.TableCell(valuetype="float", value=114736829102938475)
    repeated = table.TableCell(valuetype="string", numbercolumnsrepeated=2)
    repeated.addElement(text.P(text="tern"))
    values.addElement(ods_row([padded, parted, rounded, percent, money, truth, clock, moment, formula, failed, long,
                               repeated]))
    values.addElement(ods_row(["again"], numberrowsrepeated=3))
    book.spreadsheet.addElement(values)
    book.spreadsheet.addElement(table.Table(name="Old", stylename=hidden))
    book.save(name)


def main():
    os.chdir(os.path.dirname(os.path.abspath(__file__)))
    xlsx("orders.xlsx")
    xlsx("orders-1904.xlsx", openpyxl.utils.datetime.CALENDAR_MAC_1904)
    xls("orders.xls")
    xls("orders-1904.xls", True)
    ods("orders.ods")


main()
