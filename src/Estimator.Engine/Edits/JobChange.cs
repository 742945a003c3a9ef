using System.Text.Json.Serialization;

namespace Estimator.Engine.Edits;

/// <summary>The smallest part of an edit: one field set, one item added to a list, or one taken out.</summary>
/// <remarks>
/// Values are JSON text in the form of the job file; null stands for no value. A change knows what was there before it, so that it can be turned round and never
/// overwrites what it has not seen.
/// </remarks>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "change")]
[JsonDerivedType(typeof(SetField), "set_field")]
[JsonDerivedType(typeof(AddItem), "add_item")]
[JsonDerivedType(typeof(RemoveItem), "remove_item")]
public abstract record JobChange
{
    private protected JobChange()
    {
    }

    /// <summary>The thing whose field is set, or the list that an item enters or leaves.</summary>
    public abstract Target Target { get; init; }

    /// <summary>The change that undoes this one.</summary>
    public abstract JobChange Inverse();

    /// <summary>What is touched: the field, or the item.</summary>
    internal abstract Target Touched { get; }
}
