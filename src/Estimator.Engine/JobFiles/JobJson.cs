using System.Text.Encodings.Web;
using System.Text.Json;
using Estimator.Engine.Measures;

namespace Estimator.Engine.JobFiles;

/// <summary>How a job is written as JSON.</summary>
public static class JobJson
{
    /// <summary>The options of the serializer.</summary>
    public static JsonSerializerOptions Options { get; } = Make();

    private static JsonSerializerOptions Make()
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
            UnmappedMemberHandling = System.Text.Json.Serialization.JsonUnmappedMemberHandling.Disallow,
            DefaultIgnoreCondition = System.Text.Json.Serialization.JsonIgnoreCondition.WhenWritingNull,
            RespectNullableAnnotations = true,
            RespectRequiredConstructorParameters = true,
            AllowDuplicateProperties = false,
            MaxDepth = JobLimits.Depth,
            WriteIndented = true,
            NewLine = "\n",
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            TypeInfoResolver = new System.Text.Json.Serialization.Metadata.DefaultJsonTypeInfoResolver(),
        };
        options.Converters.Add(new LengthConverter());
        options.Converters.Add(new GridPointConverter());
        options.Converters.Add(new WireSizeConverter());
        options.Converters.Add(new TextConverter());
        options.Converters.Add(new CsvTextConverter());
        options.Converters.Add(new NumberConverter<Money>(Money.FromDollars, m => m.ToDollars(), "dollars"));
        options.Converters.Add(new NumberConverter<Area>(Area.FromSquareFeet, a => a.ToSquareFeet(), "square feet"));
        options.Converters.Add(new NumberConverter<Power>(Power.FromVoltAmperes, p => p.ToVoltAmperes(), "volt-amperes"));
        options.Converters.Add(new NumberConverter<Current>(Current.FromAmperes, c => c.ToAmperes(), "amperes"));
        options.Converters.Add(new NumberConverter<Percent>(Percent.FromHundredths, p => p.ToHundredths(), "percent"));
        options.Converters.Add(new WordConverterFactory());
        options.MakeReadOnly();
        return options;
    }
}
