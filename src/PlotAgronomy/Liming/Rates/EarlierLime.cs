using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Lime put on before the soil was taken that has not all reacted yet.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class EarlierLime
{
    private EarlierLime(ApplicationRate rate, double months)
    {
        Rate = rate;
        Months = months;
    }

    /// <summary>Gets the rate that was put on, in the lime of the institution's basis.</summary>
    public ApplicationRate Rate { get; }

    /// <summary>Gets the months between that lime and the new rate, at least 0.</summary>
    public double Months { get; }

    /// <summary>Describes earlier lime.</summary>
    /// <param name="rate">Rate put on.</param>
    /// <param name="months">Months since; finite, at least 0.</param>
    /// <returns>The earlier lime.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite months.</exception>
    public static EarlierLime FromRate(ApplicationRate rate, double months) => new(rate, Guard.AtLeast(months, 0, "months"));

    /// <summary>The part still to work, which is taken off a new rate. Only North Carolina prints a rule.</summary>
    /// <param name="institution">Institution of the new rate.</param>
    /// <param name="soilClass">Soil class.</param>
    /// <returns>The credit; null when the institution prints no rule.</returns>
    /// <remarks>credit = R - R x months x k, never below 0, with k = 0.08 on mineral soil, 0.16 on others. It ends
    /// after 12.5 or 6.25 months.</remarks>
    public ApplicationRate? CreditBy(Institution institution, SoilClass soilClass)
    {
        ArgumentNullException.ThrowIfNull(institution);
        Guard.Defined(soilClass);
        return EarlierLimeRule.FindForInstitution(institution) is { } rule
            ? ApplicationRate.FromPoundsPerAcre(
                LimeMath.ResidualTonsPerAcre(Rate.PoundsPerAcre, Months, rule.LossAMonthOn(soilClass))
            )
            : null;
    }

    internal static bool IsCreditedBy(Institution institution) => EarlierLimeRule.FindForInstitution(institution) is not null;

    internal static Finding NoCreditFrom(Institution institution) =>
        FindingCatalog.Create(LimingCodes.CreditNotPrinted, ("institution", institution.Name));

    /// <summary>lb/ac left of a rate; all of it when the institution prints no rule.</summary>
    internal double TakeOff(double poundsPerAcre, Institution institution, SoilClass soilClass) =>
        CreditBy(institution, soilClass) is { } credit ? LimeSums.LessCredit(poundsPerAcre, credit.PoundsPerAcre) : poundsPerAcre;

    /// <summary>How the credit was reckoned; no line when the institution prints no rule.</summary>
    internal IEnumerable<WorkedLine> CreditLines(string what, Institution institution, SoilClass soilClass)
    {
        if (CreditBy(institution, soilClass) is { } credit && EarlierLimeRule.FindForInstitution(institution) is { } rule)
        {
            yield return LimingFormulas
                .All[rule.FormulaId]
                .Line(
                    $"{LimeText.Tons(credit.PoundsPerAcre)} ton/ac",
                    ("what", what),
                    ("earlier lime", LimeText.Tons(Rate.PoundsPerAcre)),
                    ("months", Amounts.Print(Months, 1)),
                    ("loss a month", Amounts.Print(rule.LossAMonthOn(soilClass), 3))
                );
        }
    }

    /// <summary>The rate and its age.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Rate, "ton/ac", 2)} {Amounts.Print(Months, 1)} months ago";
}
