namespace PlotAgronomy.Nutrients;

/// <content>What the rule answers.</content>
public sealed partial class NitrogenRule
{
    /// <summary>Answers for a crop.</summary>
    /// <param name="yield">Expected yield, for rules that go by one.</param>
    /// <param name="reduction">Pounds a printed condition takes off, such as 20 lb/ac on the Piedmont; null for none.</param>
    /// <returns>The nitrogen and its dressings; without a figure, and with a finding, when the yield is missing or outside the
    /// table.</returns>
    /// <exception cref="ArgumentException">The yield is in another unit than the rule's.</exception>
    public NitrogenAnswer Answer(CropYield? yield = null, ApplicationRate? reduction = null)
    {
        if (yield is { } given && YieldUnit is { } unit && given.Unit != unit)
        {
            throw new ArgumentException($"{Title} takes a yield in {NutrientWords.InFull(unit)}, found {given}.", nameof(yield));
        }

        if (Pounds(yield) is not var (from, to))
        {
            return new NitrogenAnswer(this, yield, null, null, []);
        }

        double taken = reduction?.PoundsPerAcre ?? 0;
        double lowPounds = NitrogenMath.AfterCredit(from, taken);
        double highPounds = NitrogenMath.AfterCredit(to, taken);
        return new NitrogenAnswer(
            this,
            yield,
            ApplicationRate.FromPoundsPerAcre(lowPounds),
            ApplicationRate.FromPoundsPerAcre(highPounds),
            Split(lowPounds, highPounds)
        )
        {
            PoundsTakenOff = taken,
        };
    }
}
