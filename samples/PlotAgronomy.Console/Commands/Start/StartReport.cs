using System.Text.RegularExpressions;

namespace PlotAgronomy.Sample.Commands;

/// <summary>What the laboratory recommends, as it is printed.</summary>
internal static partial class StartReport
{
    private const string PoundsAnAcre = "lb/ac";

    /// <summary>Such as <c>2 ton/ac to pH 6.5, 6 in deep</c>; what the report does not say is left out.</summary>
    internal static void Lime(PlanDraft draft, string answer)
    {
        const string Place = "soilReport.recommendation.lime";
        string rest = answer;
        if (TargetPh().Match(rest) is { Success: true } target)
        {
            draft.Put($"{Place}.targetPh", StartWords.Number(target.Groups["ph"].Value));
            rest = rest.Remove(target.Index, target.Length);
        }

        if (Deep().Match(rest) is { Success: true } deep)
        {
            draft.Put($"{Place}.depth", deep.Groups["depth"].Value.Trim());
            rest = rest.Remove(deep.Index, deep.Length);
        }

        string rate = Rate(rest.Trim(' ', ',', ';'));
        draft.Put($"{Place}.rate", rate == "0" ? "0 ton/ac" : rate);
    }

    internal static string LimeUnderstood(PlanDraft draft)
    {
        var lime = draft.Plan.Printed!.Lime!;
        string open = lime.TargetPh is null || lime.Depth is null ? "; the sheet asks for what it does not say" : "";
        return $"{draft.Words("soilReport.recommendation.lime.rate")}{open}";
    }

    internal static bool NeedsLime(PlanDraft draft) => draft.Plan.Printed?.Lime is not { OfBasis.PoundsPerAcre: <= 0 };

    /// <summary>Such as <c>60-40-80</c> or <c>N 40 to 60, P2O5 40, K2O 80</c>, and after "for" the crop.</summary>
    internal static void Nutrients(PlanDraft draft, string answer)
    {
        const string Place = "soilReport.recommendation";
        string rest = answer;
        if (ForCrop().Match(rest) is { Success: true } crop)
        {
            draft.Put($"{Place}.crop", crop.Groups["crop"].Value.Trim());
            rest = rest.Remove(crop.Index, crop.Length).Trim(' ', ',', ';');
        }

        if (Grade().Match(rest) is { Success: true } grade)
        {
            string unit = grade.Groups["unit"].Success ? grade.Groups["unit"].Value.Trim() : PoundsAnAcre;
            foreach (string name in (string[])["nitrogen", "phosphate", "potash"])
            {
                draft.Put($"{Place}.{name}", $"{grade.Groups[name].Value} {unit}");
            }

            return;
        }

        foreach (string part in StartWords.Parts(rest))
        {
            var read = Nutrient().Match(part);
            if (!read.Success)
            {
                throw new BadAnswerException("three rates, please, such as 60-40-80, or N 40 to 60, P2O5 40, K2O 80");
            }

            string name =
                read.Groups["n"].Success ? "nitrogen"
                : read.Groups["p"].Success ? "phosphate"
                : "potash";
            string rate = read.Groups["rate"].Value.Trim();
            draft.Put($"{Place}.{name}", BareRate().IsMatch(rate) ? $"{rate} {PoundsAnAcre}" : rate);
        }
    }

    internal static string NutrientsUnderstood(PlanDraft draft)
    {
        const string Place = "soilReport.recommendation";
        var rates = new[] { ("N", "nitrogen"), ("P2O5", "phosphate"), ("K2O", "potash") }
            .Where(r => draft.Has($"{Place}.{r.Item2}"))
            .Select(r => $"{r.Item1} {draft.Words($"{Place}.{r.Item2}")}");
        return string.Join(", ", rates);
    }

    /// <summary>A rate of lime; tons where it is counted in nothing else.</summary>
    private static string Rate(string text)
    {
        var read = TonsAlone().Match(text);
        return read.Success ? $"{read.Groups["tons"].Value.Trim()} ton/ac" : text;
    }

    [GeneratedRegex(@",?\s*\bto\s+(?:a\s+)?pH\s*(?<ph>[0-9.]+)", RegexOptions.IgnoreCase)]
    private static partial Regex TargetPh();

    [GeneratedRegex(@",?\s*(?<depth>[0-9.]+\s*(?:in|inches|cm))\s*(?:deep)?\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Deep();

    [GeneratedRegex(@"^(?<tons>[0-9.]+(?:\s*(?:to|-)\s*[0-9.]+)?)\s*(?:tons?)(?:\s+(?:of\s+)?lime)?$", RegexOptions.IgnoreCase)]
    private static partial Regex TonsAlone();

    [GeneratedRegex(@"\s+for\s+(?<crop>.+)$", RegexOptions.IgnoreCase)]
    private static partial Regex ForCrop();

    [GeneratedRegex(@"^(?<nitrogen>[0-9.]+)\s*-\s*(?<phosphate>[0-9.]+)\s*-\s*(?<potash>[0-9.]+)\s*(?<unit>\D.*)?$")]
    private static partial Regex Grade();

    [GeneratedRegex(
        @"^(?:(?<n>N|nitrogen)|(?<p>P2O5|P|phosphate)|(?<k>K2O|K|potash))\s*[:=]?\s*(?<rate>[0-9].*)$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Nutrient();

    [GeneratedRegex(@"^[0-9.]+(?:\s*(?:to|-)\s*[0-9.]+)?$", RegexOptions.IgnoreCase)]
    private static partial Regex BareRate();
}
