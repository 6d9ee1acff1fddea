using System.Xml.Linq;

namespace PlotAgronomy.OfflinePage.Tests.Support;

/// <summary>What the library itself writes on this machine.</summary>
internal static class LibrarySheet
{
    /// <summary>The words of the sheet's page, which is well-formed XML.</summary>
    internal static string WordsOf(string plan) =>
        XDocument.Parse(FieldSheet.Of(PlanFile.Read(plan).Plan!.Solve()).ToHtml(), LoadOptions.PreserveWhitespace).Descendants("main").Single().Value;
}
