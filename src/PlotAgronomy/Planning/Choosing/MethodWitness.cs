using System.Collections.Immutable;

namespace PlotAgronomy.Planning;

/// <summary>Who may say which method is used, the first first: whose recommendation is printed, the laboratory, the
/// place.</summary>
internal sealed record MethodWitness(ChosenBy By, string Who, ImmutableArray<Institution> Institutions)
{
    internal static IEnumerable<MethodWitness> Of(PlotPlan plan)
    {
        if (plan.Printed?.Lime?.Institution is { IsListed: true } printed)
        {
            yield return new(ChosenBy.PrintedRecommendation, printed.Name, [printed]);
        }

        string named = plan.ReportOrNone.Program ?? plan.ReportOrNone.Laboratory;
        if (Institution.All.Where(i => i.LongestNameIn(named) > 0).MaxBy(i => i.LongestNameIn(named)) is { } laboratory)
        {
            yield return new(ChosenBy.Laboratory, laboratory.Name, [laboratory]);
            yield return new(ChosenBy.Laboratory, laboratory.Name, [.. Neighbours(laboratory)]);
        }

        if (plan.Plot.Place is { } place)
        {
            var serving = Institution.Serving(place);
            yield return new(ChosenBy.Place, place.Name, [.. serving.Where(i => i.Name == place.Name)]);
            yield return new(ChosenBy.Place, place.Name, serving);
        }
    }

    /// <summary>The first witness that has any of the methods that fit: its only one, or the several between which it does not
    /// decide. Without a witness all that fit are left.</summary>
    internal static MethodChoice<T> Choose<T>(
        PlotPlan plan,
        ImmutableArray<T> fitting,
        Func<Institution, IEnumerable<T>> methodsOf,
        Func<T, bool> isLast
    )
        where T : class
    {
        foreach (var witness in Of(plan))
        {
            ImmutableArray<T> own = [.. witness.Institutions.SelectMany(methodsOf).Where(fitting.Contains).Distinct()];
            ImmutableArray<T> first = own.Any(m => !isLast(m)) ? [.. own.Where(m => !isLast(m))] : own;
            if (first is [var only])
            {
                return new(only, witness.By, witness.Who, fitting);
            }

            if (first.Length > 1)
            {
                return new(null, ChosenBy.Nobody, witness.Who, first);
            }
        }

        return new(null, ChosenBy.Nobody, "", fitting);
    }

    /// <summary>Those that serve a place of the same institution, such as the region's.</summary>
    private static IEnumerable<Institution> Neighbours(Institution institution) =>
        Institution.All.Where(i => i != institution && i.Serves.Any(institution.Serves.Contains));
}
