namespace PlotAgronomy.Liming;

/// <summary>Dressings that come too late to be worked in, because what stands for years is sown by then: they lie on the
/// surface.</summary>
internal sealed class LimeOnStand
{
    private readonly LimePlacementRule surface;

    private LimeOnStand(LimePlacementRule surface, ApplicationRate most)
    {
        this.surface = surface;
        MostAtOnce = most;
    }

    /// <summary>Gets the most that may lie there at once.</summary>
    internal ApplicationRate MostAtOnce { get; }

    /// <summary>The institution's own rule for the surface, where it prints a most; else that of common practice.</summary>
    internal static LimeOnStand By(Institution institution)
    {
        var practice = LimePlacementRule.PracticeOnSurface;
        return LimePlacementRule.FindForInstitution(institution, LimePlacement.Surface) is { MostAtOnce: { } own } rule
            ? new(rule, own)
            : new(practice, practice.MostAtOnce!.Value);
    }

    /// <summary>How many of the dressings can be worked in before the sowing.</summary>
    internal static int DressingsBeforeSowing(LimeOrderRequest request, int dressings, int monthsBetween)
    {
        if (
            dressings < 2
            || monthsBetween == 0
            || request is not { StandsForYears: true, Placement: LimePlacement.WorkedIn }
            || request.SowingOn is not { } sowing
        )
        {
            return dressings;
        }

        var first = request.FirstDressingOn ?? sowing;
        int before = 1;
        while (before < dressings && MonthsAfter(first, before * monthsBetween) <= sowing)
        {
            before++;
        }

        return before;
    }

    /// <summary>The day so many months later; null past the end of the calendar, where a rate was mistyped.</summary>
    internal static DateOnly? MonthsAfter(DateOnly first, int months) =>
        months >= 0 && months <= ((DateOnly.MaxValue.Year - first.Year) * 12) + DateOnly.MaxValue.Month - first.Month
            ? first.AddMonths(months)
            : null;

    /// <summary>What is left, in equal parts: months after the first dressing, and pounds.</summary>
    internal IEnumerable<(int Months, double Pounds)> Parts(int before, int monthsBetween, double pounds, double acres)
    {
        int parts = Package.RoundUp(pounds / acres / MostAtOnce.PoundsPerAcre);
        int apart = Math.Max(monthsBetween, surface.MonthsBetween ?? 0);
        for (int n = 1; n <= parts; n++)
        {
            yield return (((before - 1) * monthsBetween) + (n * apart), pounds / parts);
        }
    }
}
