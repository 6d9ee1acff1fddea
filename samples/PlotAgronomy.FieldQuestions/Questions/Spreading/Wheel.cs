using PlotAgronomy.Spreading;

namespace PlotAgronomy.FieldQuestions.Spreading;

/// <summary>A pushed seeder with three spouts 14 inches apart, for cowpeas on three tenths of an acre: 50 pounds an acre are
/// wanted, and its dial stands where 55 are printed. The wheel was turned by hand over three cups.</summary>
internal static class Wheel
{
    internal static void Answer(TextWriter output)
    {
        var wanted = ApplicationRate.FromPoundsPerAcre(50);
        var (wheel, rows) = (Length.FromInches(16), Length.FromInches(14));
        output.Tell(PrintedDial.Compare(wanted, claimed: ApplicationRate.FromPoundsPerAcre(55)));

        Mass[] cups = [Mass.FromOunces(5.9), Mass.FromOunces(6.2), Mass.FromOunces(5.1)];
        output.Tell(OutletCheck.For(cups));

        var once = MeasuredRate.FeetPerWheelTurn(wheel);
        var caught = Mass.FromOunces(cups.Sum(c => c.Ounces));
        var errors = new MeasuringErrors { Scale = Mass.FromOunces(0.2), Distance = Length.FromFeet(2) };
        var dropped = MeasuredRate.WheelTurns(caught, turns: 50, once, cups.Length, rows, Fraction.FromPercent(4), errors);
        output.Tell(dropped);
        double times = dropped.Rate / wanted;
        string error = Amounts.Print(dropped.Error.CombinedPercent, 1);
        output.WriteLine($"It drops {Amounts.Print(times, 2)} times what is wanted, give or take {error} %.");

        double turns = MeasuredRate.WheelTurnsFor(Length.FromFeet(100), wheel);
        output.WriteLine($"In the field count the turns over 100 ft: what {Amounts.Print(turns, 1)} lack is skid.");

        var plot = Area.FromAcres(0.3);
        output.WriteLine($"The plot has {Amounts.Print(MeasuredRate.RowLengthOn(plot, rows), "ft", 0)} of row.");
        output.WriteLine($"It takes {Amounts.Print(wanted.Over(plot), "lb", 0)} of cowpeas;");
        output.WriteLine($"with the dial left there, {Amounts.Print(dropped.Rate.Over(plot), "lb", 1)} would go.");
    }
}
