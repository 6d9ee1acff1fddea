using PlotAgronomy.Spreading;

namespace PlotAgronomy.FieldQuestions.Spreading;

/// <summary>The gate of a spreader was weighed in with wheat. Triticale at 60 pounds an acre and pearl millet at 20 come next:
/// where does the first run start?</summary>
internal static class OtherSeed
{
    internal static void Answer(TextWriter output)
    {
        Density wheatBulk = OfQuart(1.6), triticaleBulk = OfQuart(1.4), milletBulk = OfQuart(1.5);
        GatePoint[] weighed = [Gate(1, 0.7), Gate(2, 1.5), Gate(3, 2.6), Gate(4, 4.4), Gate(5, 6.6), Gate(6, 9.1)];
        var wheat = GateTable.FromPoints("wheat", weighed);

        // Triticale is about as large as wheat, only lighter by the quart.
        output.Tell(FirstGate(wheat.ScaledToDensity("triticale", wheatBulk, triticaleBulk), poundsPerAcre: 60));

        // Millet is smaller: ten grains of each were laid along a rule.
        var ofWheat = GrainFlow.For(Length.FromMillimeters(3.8), wheatBulk);
        var ofMillet = GrainFlow.For(Length.FromMillimeters(2.2), milletBulk);
        output.Tell(FirstGate(wheat.ScaledToGrain("pearl millet", ofWheat, ofMillet), poundsPerAcre: 20));

        // The first run of triticale: two ounces and a half lay on a tarp of 10 by 12 feet.
        var caught = MeasuredRate.TrayCatch(Mass.FromOunces(2.5), Area.FromSquareFeet(120));
        output.Tell(caught);
        double percent = 100 * caught.Rate.PoundsPerAcre / 60;
        output.WriteLine($"That is {Amounts.Print(percent, 0)} % of what is wanted: now weigh a run.");
    }

    private static GateAnswer FirstGate(GateTable gates, double poundsPerAcre)
    {
        var rate = ApplicationRate.FromPoundsPerAcre(poundsPerAcre);
        return gates.SettingFor(SpreaderSetting.FlowFor(rate, Speed.FromMilesPerHour(3), swath: Length.FromFeet(16)).Flow);
    }

    private static Density OfQuart(double pounds) => Mass.FromPounds(pounds) / Volume.FromUsQuarts(1);

    private static GatePoint Gate(double setting, double poundsPerMinute) =>
        GatePoint.FromFlow(setting, MassFlow.FromPoundsPerMinute(poundsPerMinute));
}
