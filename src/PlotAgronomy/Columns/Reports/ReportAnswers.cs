using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Columns;

/// <summary>A row of answers for every report of a table.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class ReportAnswers
{
    private static readonly EnumWords<RatingStanding> Standings = EnumWords<RatingStanding>.FromNames();

    private ReportAnswers(ImmutableArray<ReportAnswer> rows) => Rows = rows;

    /// <summary>Gets the answers in the order of the table.</summary>
    public ImmutableArray<ReportAnswer> Rows { get; }

    /// <summary>Answers every report.</summary>
    /// <param name="table">Reports.</param>
    /// <param name="request">What is asked of each.</param>
    /// <returns>The answers.</returns>
    /// <exception cref="ArgumentException">Lime is asked, and no pH to aim at.</exception>
    public static ReportAnswers For(ReportTable table, ReportRequest request)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(request);
        if (request is { LimeMethod: not null, TargetPh: null })
        {
            throw new ArgumentException("Lime is asked, but no pH to aim at (4 to 9): it belongs to the crop.", nameof(request));
        }

        return new([.. table.Rows.Select(r => new ReportAnswer(r, request))]);
    }

    /// <summary>Answers to several tables, or by several methods, as one.</summary>
    /// <param name="answers">Answers.</param>
    /// <returns>All rows in turn.</returns>
    public static ReportAnswers Join(params IReadOnlyList<ReportAnswers> answers)
    {
        Guard.NotEmpty(answers);
        return new([.. answers.SelectMany(a => a.Rows)]);
    }

    /// <summary>The mean of the lime rates that were answered, none needed counted as zero.</summary>
    /// <returns>The rate in lb/ac of the one basis; null when no report was answered.</returns>
    /// <exception cref="InvalidOperationException">The rates are counted in different limes, or to different depths: they can be
    /// neither added nor averaged.</exception>
    public ApplicationRate? MeanLime()
    {
        LimeRate[] rates = [.. Rows.Select(r => r.Lime).OfType<LimeRate>()];
        if (rates.Length == 0)
        {
            return null;
        }

        var other = rates.FirstOrDefault(r => r.Basis != rates[0].Basis || !SameDepth(r, rates[0]));
        return other is null
            ? ApplicationRate.FromPoundsPerAcre(rates.Average(r => r.OfBasis.PoundsPerAcre))
            : throw new InvalidOperationException(
                $"{Words(rates[0])} and {Words(other)} are different limes: count them apart, or turn each into one material."
            );
    }

    /// <summary>The answers as comma-separated text: a line a report, blank where there is no answer.</summary>
    /// <returns>The text, with a header line; lime in lb/ac of the named basis as its institution prints it, P2O5 and K2O in
    /// lb/ac.</returns>
    public string ToCsv()
    {
        var text = new StringBuilder();
        text.AppendCsvLine(
            "sample",
            "crop",
            "lime_lb_per_ac",
            "lime_basis",
            "phosphate_lb_per_ac",
            "potash_lb_per_ac",
            "phosphorus",
            "potassium",
            "findings"
        );
        foreach (var row in Rows)
        {
            text.AppendCsvLine(
                row.Row.Sample,
                row.Crop is { } crop ? CropRows.WordsFor(crop) : row.Row.Crop,
                Number(row.Lime?.OfBasis),
                row.Lime?.Basis.Id ?? "",
                Number(row.Phosphate),
                Number(row.Potash),
                row.Phosphorus is { } phosphorus ? Standings[phosphorus] : "",
                row.Potassium is { } potassium ? Standings[potassium] : "",
                string.Join(' ', row.Findings.Select(f => f.Code).Distinct())
            );
        }

        return text.ToString();
    }

    /// <summary>How many reports, and how many of them are answered.</summary>
    /// <returns>Text such as <c>500 reports: lime for 480, P2O5 for 470, K2O for 470</c>.</returns>
    public override string ToString() =>
        $"{Amounts.Print(Rows.Length, 0)} reports: lime for {Count(r => r.Lime is not null)}, "
        + $"P2O5 for {Count(r => r.Phosphate is not null)}, K2O for {Count(r => r.Potash is not null)}";

    private static string Words(LimeRate rate) => $"{rate.Basis} to {Amounts.Print(rate.Depth, "in", 1)}";

    private string Count(Func<ReportAnswer, bool> isAnswered) => Amounts.Print(Rows.Count(isAnswered), 0);

    private static string Number(ApplicationRate? rate) =>
        rate is { } known ? known.PoundsPerAcre.ToString("0.###", CultureInfo.InvariantCulture) : "";

    private static bool SameDepth(LimeRate one, LimeRate other)
    {
        double inches = one.Depth.Inches,
            otherInches = other.Depth.Inches;
        return Tolerance.AreEqual(inches, otherInches);
    }
}
