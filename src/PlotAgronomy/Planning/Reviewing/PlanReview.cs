using System.Collections.Immutable;
using PlotAgronomy.Records;

namespace PlotAgronomy.Planning;

/// <summary>Next year's plan out of last year's and the book: every change with its reason, nothing else touched.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlanReview
{
    private PlanReview(PlotPlan last, ImmutableArray<PlanChange> changes)
    {
        Last = last;
        Changes = changes;
    }

    /// <summary>Gets last year's plan, which stays as it is.</summary>
    public PlotPlan Last { get; }

    /// <summary>Gets the changes, in the order in which they are made; those that only the owner can decide last.</summary>
    public ImmutableArray<PlanChange> Changes { get; }

    /// <summary>Gets next year's plan with every change made.</summary>
    public PlotPlan Next => With(Changes);

    /// <summary>Reviews a year.</summary>
    /// <param name="last">The plan of that year.</param>
    /// <param name="book">The book.</param>
    /// <param name="year">The year; what the book has of later days is not looked at.</param>
    /// <returns>The review.</returns>
    /// <exception cref="ArgumentException">The plan has no day of planting, or plants in a later year.</exception>
    public static PlanReview Of(PlotPlan last, PlotBook book, int year)
    {
        Guard.NotNull(last);
        Guard.NotNull(book);
        if (last.PlantingDate is not { } planted)
        {
            throw new ArgumentException(
                "The plan has no day of planting: set it, so that the next one can follow.",
                nameof(last)
            );
        }

        return planted.Year <= year
            ? new(last, [.. PlanChanges.Of(last, book, new(year, 12, 31)).OrderBy(c => !c.IsMade)])
            : throw new ArgumentException(
                string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"The plan plants in {planted.Year}, after the year {year} that is reviewed."
                ),
                nameof(year)
            );
    }

    /// <summary>Next year's plan with those changes that are taken.</summary>
    /// <param name="taken">Changes of this review; those that are no choice are made in any case.</param>
    /// <returns>The plan.</returns>
    public PlotPlan With(IEnumerable<PlanChange> taken)
    {
        HashSet<PlanChange> wanted = [.. taken];
        return Changes
            .Where(c => c.Apply is not null && (!c.IsChoice || wanted.Contains(c)))
            .Aggregate(Last, (plan, change) => change.Apply!(plan));
    }

    /// <summary>The plot and how many changes.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Last.Plot.Name}: {Amounts.PrintCount(Changes.Count(c => c.IsMade), "change")} for the next year";
}
