using PlotAgronomy.Spreading;

namespace PlotAgronomy.FieldQuestions.Spreading;

/// <summary>Four pounds an acre of white clover for three quarters of an acre, and a bag seeder that comes in spurts below 1.2
/// pounds a minute. A quart of the seed and of what lies in the shed was weighed.</summary>
internal static class Carriers
{
    private static readonly (Carrier Carrier, double PoundsAQuart)[] Shed =
        [(Carrier.RiceHulls, 0.27), (Carrier.DrySand, 3.3), (Carrier.PelletizedLime, 2.1)];

    internal static void Answer(TextWriter output)
    {
        var (clover, plot) = (ApplicationRate.FromPoundsPerAcre(4), Area.FromAcres(0.75));
        foreach (var (carrier, quart) in Shed)
        {
            var mix = Mix(clover, carrier, quart);
            string cups = Amounts.Print(mix.PartsByVolume!.Value, 1);
            output.WriteLine($"{carrier.Name}: {cups} cups to a cup of seed; {carrier.Remark}.");
        }

        foreach (var other in Carrier.All.Where(c => !c.IsFit))
        {
            output.WriteLine($"Not {other.Name}: {other.Remark}.");
        }

        // Sand it is: the bag of the seeder holds six pounds of the mix.
        var chosen = Mix(clover, Carrier.DrySand, quart: 3.3);
        output.Tell(chosen);
        var (seed, all) = (clover.Over(plot), chosen.BlendRate.Over(plot));
        var bag = MeasuredBucket.Weighed(Mass.FromPounds(6));
        output.WriteLine($"For the plot {Amounts.Print(seed, "lb", 1)} of seed, with sand {Amounts.Print(all, "lb", 1)}.");
        output.WriteLine($"Fill the bag of the seeder, and {Amounts.Print(bag.RefillsFor(all), 0)} times more.");

        var lime = Carrier.PelletizedLime;
        var told = CarrierMix.ForParts(clover, lime.PartsLow!.Value, lime);
        string parts = Amounts.Print(told.PartsByWeight, 0);
        output.WriteLine($"With lime as people mix it, {parts} lb to one of seed, {told.BlendRate} go on.");
    }

    private static CarrierMix Mix(ApplicationRate clover, Carrier carrier, double quart) =>
        CarrierMix.ForSteadyFlow(
            clover,
            smallestFlow: MassFlow.FromPoundsPerMinute(1.2),
            Speed.FromMilesPerHour(3),
            swath: Length.FromFeet(12),
            carrier,
            seedBulk: OfQuart(1.6),
            OfQuart(quart));

    private static Density OfQuart(double pounds) => Mass.FromPounds(pounds) / Volume.FromUsQuarts(1);
}
