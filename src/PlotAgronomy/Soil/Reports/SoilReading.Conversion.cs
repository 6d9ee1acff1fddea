using PlotAgronomy.Soil;

namespace PlotAgronomy;

/// <content>The same reading in another unit.</content>
public sealed partial record SoilReading
{
    /// <summary>The same reading in another unit, exactly where the definitions allow; the extractant stays what it is.</summary>
    /// <param name="unit">Unit wanted.</param>
    /// <param name="soil">What is known of the soil: layer for lb/ac, W/V between volume
    /// and weight, CEC for percent saturation.</param>
    /// <param name="form">Element or oxide wanted.</param>
    /// <returns>The reading in both units, with each step; a finding when the depth had
    /// to be assumed or a factor is from memory.</returns>
    /// <exception cref="ArgumentException">The unit does not fit the analyte or extractant,
    /// or the soil lacks what the conversion needs.</exception>
    /// <remarks>lb/ac = ppm x million lb of soil (2 in the furrow slice) = mg/dm3 x inches x 0.2266; ppm = mg/dm3 / (W/V);
    /// ppm = meq/100 g x equivalent weight x 10; P2O5 = 2.2913 P; K2O = 1.2046 K.</remarks>
    public ReadingConversion ConvertTo(SoilTestUnit unit, SampledSoil soil, PrintedForm form = PrintedForm.Element)
    {
        ArgumentNullException.ThrowIfNull(soil);
        Guard.Defined(unit);
        Guard.Defined(form);
        if (unit == Unit && form == Form)
        {
            return new ReadingConversion(this, this, [], static () => []);
        }

        Refuse(Unit);
        Refuse(unit);
        return UnitWalk.Run(this, unit, soil, form);
    }

    private void Refuse(SoilTestUnit unit)
    {
        bool salts = Analyte == SoilAnalyte.SolubleSalts;
        if (salts || unit == SoilTestUnit.DecisiemensPerMeter)
        {
            throw new ArgumentException(
                $"{SoilWords.Opening(Analyte)} in {SoilWords.For(unit)} has no conversion to another unit.",
                nameof(unit)
            );
        }

        if (
            unit
                is SoilTestUnit.MilliequivalentsPer100Grams
                    or SoilTestUnit.MilliequivalentsPer100CubicCentimeters
                    or SoilTestUnit.PercentSaturation
            && Cations.EquivalentWeightOf(Analyte) is null
        )
        {
            throw new ArgumentException(
                $"{SoilWords.Opening(Analyte)} is not one of the exchangeable cations Ca, Mg, K and Na.",
                nameof(unit)
            );
        }
    }
}
