using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>Two readings of one kind that differ. Which of them counts is asked; none is taken in silence.</summary>
internal static class ReadingTwice
{
    internal static IEnumerable<Finding> Of(SoilReport report) =>
        [
            .. report
                .BufferPhs.GroupAlike((one, other) => one.Buffer == other.Buffer)
                .Select(alike => OfBuffer(report, alike[0].Buffer))
                .OfType<Finding>(),
            .. report
                .Readings.GroupAlike((one, other) => one.Analyte == other.Analyte)
                .SelectMany(alike => OfAnalyte(report, alike[0].Analyte)),
        ];

    internal static Finding? OfBuffer(SoilReport report, SoilBuffer buffer)
    {
        ImmutableArray<double> values =
        [
            .. report.BufferPhs.Where(b => b.Buffer == buffer).Select(b => b.Value).Distinct().Order(),
        ];
        return values.Length < 2 ? null : Ask($"buffer pH ({SoilWords.For(buffer)})", values.Select(v => Amounts.Print(v, 2)));
    }

    internal static IEnumerable<Finding> OfAnalyte(SoilReport report, SoilAnalyte analyte) =>
        report
            .FindAll(analyte)
            .GroupAlike(ReadingKinds.AreOfOneKind)
            .Where(ReadingKinds.Differ)
            .Select(kind =>
                Ask(
                    $"{SoilWords.For(analyte)} ({SoilWords.For(kind[0].Extractant)})",
                    kind.Distinct().OrderBy(r => r.PrintedValue).Select(r => r.Printed)
                )
            );

    private static Finding Ask(string what, IEnumerable<string> values) =>
        FindingCatalog.Create(SoilCodes.ReadingTwice, ("reading", what), ("values", string.Join(" and ", values)));
}
