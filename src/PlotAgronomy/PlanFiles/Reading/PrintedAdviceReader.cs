using PlotAgronomy.Liming;
using UnitsNet;

namespace PlotAgronomy.PlanFiles;

/// <summary>Reads the laboratory's own recommendation.</summary>
internal static class PrintedAdviceReader
{
    internal static PrintedAdvice? Read(PlanObject report)
    {
        if (report.Object("recommendation") is not { } printed)
        {
            return null;
        }

        var nitrogen = printed.Amount<ApplicationRate>("nitrogen", Amounts.TryReadRate);
        var phosphate = printed.Amount<ApplicationRate>("phosphate", Amounts.TryReadRate);
        var potash = printed.Amount<ApplicationRate>("potash", Amounts.TryReadRate);
        var lime = printed.Object("lime") is { } rate ? Lime(rate, report.Text("laboratory")) : null;
        return printed.Text("crop") is { } crop
            ? new PrintedAdvice
            {
                Crop = crop,
                Lime = lime,
                Nitrogen = nitrogen,
                Phosphate = phosphate,
                Potash = potash,
            }
            : null;
    }

    private static PrintedLimeRate? Lime(PlanObject lime, string? laboratory)
    {
        var depth = lime.PositiveAmount<Length>("depth", Amounts.TryReadLength, l => l.Feet);
        return
            lime.Amount<ApplicationRate>("rate", Amounts.TryReadRate) is ApplicationRate rate
            && lime.Chosen("basis", PlanVocabulary.LimeBases) is { } basis
            ? lime.Try("rate", () => PrintedLimeRate.Read(rate, lime.Number("targetPh"), depth, basis, Whose(lime, laboratory)))
            : null;
    }

    /// <summary>The institution named, which must be known; without one, the laboratory itself.</summary>
    private static Institution? Whose(PlanObject lime, string? laboratory)
    {
        if (lime.Text("institution") is not { } name)
        {
            return laboratory is null ? null : Institution.FindLaboratory(laboratory);
        }

        if (!Institution.TryFind(name, out var institution, out string problem))
        {
            lime.Report("institution", problem);
        }

        return institution;
    }
}
