namespace PlotAgronomy.Records;

/// <summary>A kind or a blend with what was seen of it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class RankedKind
{
    private RankedKind(
        string name,
        CropKind? kind,
        int observations,
        int plots,
        int years,
        double mean,
        double shrunk,
        double error,
        int? more
    )
    {
        Name = name;
        Kind = kind;
        Observations = observations;
        Plots = plots;
        Years = years;
        Mean = mean;
        Shrunk = shrunk;
        StandardError = error;
        MoreToTell = more;
    }

    /// <summary>Gets the name of the kind or the blend.</summary>
    public string Name { get; }

    /// <summary>Gets the kind; null for a blend.</summary>
    public CropKind? Kind { get; }

    /// <summary>Gets how many observations it rests on.</summary>
    public int Observations { get; }

    /// <summary>Gets on how many plots it was seen.</summary>
    public int Plots { get; }

    /// <summary>Gets in how many years it was seen.</summary>
    public int Years { get; }

    /// <summary>Gets the mean of its own observations, as a part of one.</summary>
    public double Mean { get; }

    /// <summary>Gets what is to be expected of it: its mean drawn toward that of all, the more the fewer its
    /// observations.</summary>
    public double Shrunk { get; }

    /// <summary>Gets the standard error of <see cref="Shrunk"/>.</summary>
    public double StandardError { get; }

    /// <summary>Gets how many more observations, one a plot and year, would part it from the mean of all, if they went on as
    /// those seen; 0 where it is parted already, null where not even many would, or nothing else was seen to hold it
    /// against.</summary>
    public int? MoreToTell { get; }

    /// <summary>That number for a cell of a table.</summary>
    internal string More =>
        MoreToTell switch
        {
            null => $"over {Amounts.Print(RecordConstants.All["most-more-to-tell"], 0)}",
            0 => "none",
            { } more => Amounts.Print(more, 0),
        };

    /// <summary>Name, expectation and how many observations.</summary>
    /// <returns>Text such as <c>crimson clover: 48 % (own mean 55 %, 3 seen)</c>.</returns>
    public override string ToString() =>
        $"{Name}: {StandOutcome.Percent(Shrunk)} (own mean {StandOutcome.Percent(Mean)}, {Amounts.Print(Observations, 0)} seen)";

    internal static RankedKind Of(IGrouping<string, Observation> seen, Shrinkage all)
    {
        int count = seen.Count();
        double mean = seen.Average(o => o.Value);
        return new(
            seen.Key,
            seen.First().Kind,
            count,
            seen.Select(o => o.Plot).Distinct().Count(),
            seen.Select(o => o.On.Year).Distinct().Count(),
            mean,
            all.Shrunk(mean, count),
            all.StandardError(count),
            all.MoreToTell(mean, count)
        );
    }
}
