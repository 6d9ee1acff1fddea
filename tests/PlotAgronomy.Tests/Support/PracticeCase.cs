using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Support;

/// <summary>Values of the practice cases (common practice): situations plot owners ask about, with the right answers.</summary>
internal static class PracticeCase
{
    private static readonly Lazy<CsvTable> Table = new(() => WorkedExamples.Table(Path.Combine("Support", "cases.csv")));

    /// <summary>Asserts a case's value: "exact" to the last digit shown, else within the tolerance given.</summary>
    internal static void AssertMatches(string caseId, string quantity, double actual)
    {
        Note(caseId, quantity, actual.ToString("R", CultureInfo.InvariantCulture));
        var (expected, tolerance) = Expected(caseId, quantity);
        Assert.True(Math.Abs(actual - expected) <= tolerance, string.Create(CultureInfo.InvariantCulture, $"{caseId} {quantity}: expected {expected} +- {tolerance}, got {actual:R}"));
    }

    internal static void Note(string caseId, string quantity, string actual) =>
        ExampleRecord.Note("cases.csv", $"{caseId} {quantity}", actual);

    internal static (double Value, double Tolerance) Expected(string caseId, string quantity)
    {
        var row = Table.Value.Rows.Single(r => r.Text("case") == caseId && r.Text("quantity") == quantity);
        string text = row.Text("tolerance");
        double expected = row.Number("expected");
        if (text.StartsWith("+-", StringComparison.Ordinal))
        {
            string number = text[2..].Split(' ', ',')[0];
            return (expected, double.Parse(number, CultureInfo.InvariantCulture));
        }

        string printed = row.Text("expected");
        int decimals = printed.Contains('.', StringComparison.Ordinal) ? printed.Length - printed.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        double lastDigit = decimals == 0 ? 1e-9 : 0.5 * Math.Pow(10, -decimals);
        return (expected, Math.Max(lastDigit, 1e-9 * Math.Abs(expected)));
    }
}
