using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Columns;

/// <summary>A row of a table of soil tests while its cells are read.</summary>
internal sealed class ReportDraft
{
    private readonly List<SoilReading> readings = [];
    private readonly List<BufferPh> buffers = [];

    internal string Sample { get; set; } = "";

    internal string Crop { get; set; } = "";

    internal WaterPh? WaterPh { get; set; }

    internal SaltPh? SaltPh { get; set; }

    internal CationCharge? ExchangeCapacity { get; set; }

    internal CationCharge? Acidity { get; set; }

    internal Fraction? OrganicMatter { get; set; }

    internal Fraction? HumicMatter { get; set; }

    internal Density? WeightPerVolume { get; set; }

    internal Length? Depth { get; set; }

    internal SoilClass? Class { get; set; }

    internal SoilTexture? Texture { get; set; }

    internal void Add(SoilReading reading) => readings.Add(reading);

    internal void Add(BufferPh reading) => buffers.Add(reading);

    /// <param name="alike">What every report of the table states alike; a cell goes before it.</param>
    internal SoilReport Finish(SoilReport alike) =>
        alike with
        {
            Readings = [.. alike.Readings, .. readings],
            BufferPhs = [.. alike.BufferPhs, .. buffers],
            WaterPh = WaterPh ?? alike.WaterPh,
            SaltPh = SaltPh ?? alike.SaltPh,
            PrintedExchangeCapacity = ExchangeCapacity ?? alike.PrintedExchangeCapacity,
            ExchangeableAcidity = Acidity ?? alike.ExchangeableAcidity,
            OrganicMatter = OrganicMatter ?? alike.OrganicMatter,
            HumicMatter = HumicMatter ?? alike.HumicMatter,
            WeightPerVolume = WeightPerVolume ?? alike.WeightPerVolume,
            SampledDepth = Depth ?? alike.SampledDepth,
            SoilClass = Class ?? alike.SoilClass,
            Texture = Texture ?? alike.Texture,
        };
}
