using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>One thing that is there, and how far it goes.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class UseUpLine
{
    private UseUpLine() { }

    /// <summary>Gets what it is.</summary>
    public required string Name { get; init; }

    /// <summary>Gets how much of it is there.</summary>
    public required Mass There { get; init; }

    /// <summary>Gets the rate at which the plan uses it, as it lies in the bag.</summary>
    public required ApplicationRate Rate { get; init; }

    /// <summary>Gets the ground it does at that rate.</summary>
    public required Area Ground { get; init; }

    /// <summary>Gets what is missing for the whole plot; zero where there is enough.</summary>
    public required Mass ShortForPlot { get; init; }

    /// <summary>Gets what is left when what runs out first is used up, or of a thing by itself when the plot is done; zero
    /// where none is.</summary>
    public required Mass Left { get; init; }

    internal static UseUpLine For(string name, double pounds, double poundsPerAcre, Area plot)
    {
        double acres = plot.Acres,
            needed = poundsPerAcre * acres;
        return new()
        {
            Name = name,
            There = Mass.FromPounds(pounds),
            Rate = ApplicationRate.FromPoundsPerAcre(poundsPerAcre),
            Ground = Area.FromAcres(pounds / poundsPerAcre),
            ShortForPlot = Mass.FromPounds(Math.Max(0, needed - pounds)),
            Left = Mass.FromPounds(Math.Max(0, pounds - needed)),
        };
    }

    /// <summary>The same with what is left after so much ground.</summary>
    internal UseUpLine LeavingAt(Area ground)
    {
        double acres = ground.Acres;
        return new()
        {
            Name = Name,
            There = There,
            Rate = Rate,
            Ground = Ground,
            ShortForPlot = ShortForPlot,
            Left = Mass.FromPounds(Math.Max(0, There.Pounds - Rate.PoundsPerAcre * acres)),
        };
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}: {Amounts.Print(There, "lb", 2)} for {Amounts.Print(Ground, "ac", 3)}";
}
