using System.Collections.Immutable;

namespace PlotAgronomy.Records;

/// <summary>Browse by classes of use.</summary>
internal static class BrowseMath
{
    /// <summary>The middles of the six classes, in percent.</summary>
    internal static double[] Percents =>
        [.. Enumerable.Range(0, BrowseEntry.Classes).Select(i => RecordConstants.All[$"browse-class-{ExactText.Of(i)}"])];

    internal static double[] Pooled(IEnumerable<BrowseEntry> entries)
    {
        double[] plants = new double[BrowseEntry.Classes];
        foreach (var entry in entries)
        {
            for (int i = 0; i < plants.Length; i++)
            {
                plants[i] += entry.PlantsByClass[i];
            }
        }

        return plants;
    }

    internal static double Use(double[] plants) => RecordMath.BrowsedPercent(plants, Percents);

    /// <summary>Half the range of the mean over plants taken at random.</summary>
    internal static double Margin(double[] plants)
    {
        double[] percents = Percents;
        double mean = RecordMath.BrowsedPercent(plants, percents);
        double all = plants.Sum();
        double squares = plants.Zip(percents).Sum(c => c.First * (c.Second - mean) * (c.Second - mean));
        return all > 1 ? RecordConstants.All["z-95"] * Math.Sqrt(squares / (all - 1) / all) : 100;
    }

    internal static ImmutableArray<(string Place, string Value)> Places(double[] plants) =>
        [
            .. plants.Select((n, i) => ($"plants {ExactText.Of(i)}", Amounts.Print(n, 0))),
            .. Percents.Select((p, i) => ($"use {ExactText.Of(i)}", Amounts.Print(p, 0))),
            ("plants", Amounts.Print(plants.Sum(), 0)),
        ];
}
